const PAPER_SIZES = { letter: 'letter', a4: 'A4' } as const

/** The look of a packet: plain, black on white, pages numbered, the tree named at the foot of each. */
export function packetStyle(paper: keyof typeof PAPER_SIZES, foot: string): string {
  return `
@page {
  size: ${PAPER_SIZES[paper]};
  margin: 16mm 14mm 18mm;
  @bottom-left { content: "${foot}"; font: 7.5pt "Atkinson Hyperlegible Next", Arial, sans-serif; }
  @bottom-right { content: counter(page) " of " counter(pages); font: 8.5pt "Atkinson Hyperlegible Next", Arial, sans-serif; }
}
* { box-sizing: border-box; }
body { margin: 0; color: #000; background: #fff; font: 15px/1.4 "Atkinson Hyperlegible Next", Arial, sans-serif; }
main { max-width: 54rem; margin: 0 auto; padding: 1.5rem; }
h1 { font-size: 1.7em; line-height: 1.2; margin-block: 0 0.6em; }
h2 { font-size: 1.35em; line-height: 1.2; margin-block: 1.6em 0.5em; break-after: avoid; }
h3 { font-size: 1.1em; line-height: 1.25; margin-block: 1.3em 0.4em; break-after: avoid; }
h4 { font-size: 1em; margin-block: 0.8em 0.2em; break-after: avoid; }
h4 small { font-weight: normal; }
p { margin-block: 0.25em; }
a { color: inherit; }
code { font: 0.78em ui-monospace, "Liberation Mono", monospace; color: #444; overflow-wrap: anywhere; }
small, .grounds { font-size: 0.85em; color: #333; }
ul, ol { margin-block: 0.2em; padding-inline-start: 1.2em; }
.facts { display: grid; grid-template-columns: max-content 1fr; gap: 0.1em 1em; margin-block: 0.6em; }
.facts div { display: contents; }
.facts dd { margin: 0; overflow-wrap: anywhere; }
nav { break-after: page; }
nav li { margin-block: 0.3em; }
.part { break-before: page; }
.lead { font-weight: bold; }
.number { font-weight: bold; font-variant-numeric: tabular-nums; }
.item { margin-block: 0 0.7em; padding-top: 0.4em; border-top: 1px solid #777; break-inside: avoid; }
.item p, .rules p { margin-block: 0.1em; }
.boxes { font-weight: bold; }
.rules, .sources, .words, .notes { list-style: none; padding: 0; }
.rules > li, .sources > li, .notes > li { margin-block: 0.5em; break-inside: avoid; }
.patterns > li, .words > li { margin-block: 0.2em; break-inside: avoid; }
.freed > li { margin-block: 0.6em; }
table { width: 100%; margin-block: 0.5em; border-collapse: collapse; }
tbody, caption, thead { break-inside: avoid; break-after: auto; }
caption { text-align: start; font-style: italic; padding-block: 0.2em; }
th, td { padding: 0.15em 0.5em; border: 1px solid #777; text-align: start; vertical-align: top; }
thead th { background: #eee; }
tr.changes > td { border-top: 3px double #000; }
.signature { margin-block: 1.5em; break-inside: avoid; }
.signature p { margin-block: 1.2em 0; }
.change { margin-block: 0.8em; padding-inline-start: 0.8em; border-inline-start: 6px solid #999; break-inside: avoid; }
.change-less-cautious { border-inline-start: 6px double #000; }
@media print {
  body { font-size: 10pt; line-height: 1.28; }
  main { max-width: none; padding: 0; }
  .items, .rules, .words, .patterns, .notes, .sources { columns: 2; column-gap: 7mm; }
  .notes .patterns { columns: 1; font-size: 1em; }
  .items, .rules, .words, .patterns, .notes, .sources, table { font-size: 8.5pt; }
  .rules > li, .sources > li, .notes > li { margin-block: 0.35em; }
}
`
}
