/** The look of printed decision tables: plain, black on white, heads repeated on every page. */
export const TABLE_STYLE = `
@page { size: landscape; margin: 10mm; }
body { margin: 1rem; color: #000; background: #fff; font: 14px/1.35 system-ui, sans-serif; }
h1, h2 { line-height: 1.2; }
h2 { margin-block: 2rem 0.5rem; break-after: avoid; }
p { max-width: 45rem; margin-block: 0.25rem; }
.standing { font-weight: bold; }
section { overflow-x: auto; }
table { margin-block: 0.75rem; border-collapse: collapse; font-size: 11px; }
th, td { padding: 2px 4px; border: 1px solid #555; text-align: start; vertical-align: top; }
thead th { background: #eee; vertical-align: bottom; }
th.part { writing-mode: vertical-rl; max-height: 16em; font-weight: normal; }
tr { break-inside: avoid; }
td.any { color: #595959; }
td.outcome { font-weight: bold; }
@media print {
  section { overflow: visible; }
  table { font-size: 6.5pt; }
  th, td { padding: 1px 2px; }
}
`
