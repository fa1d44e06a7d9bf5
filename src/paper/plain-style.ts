/** The one style sheet of the pages without scripts: their own look, in light and dark, on a screen and on paper. */
export const PLAIN_STYLE = `:root {
  color-scheme: light dark;
  --paper: #faf6ee; --card: #fffdf8; --ink: #231f1a; --soft: #5d5347; --tea: #8a4b0f; --rule: #cfc4b2;
}
@media (prefers-color-scheme: dark) {
  :root { --paper: #231f1a; --card: #2d2822; --ink: #faf6ee; --soft: #cbbfae; --tea: #e0a866; --rule: #5b5145; }
}
* { box-sizing: border-box; }
body {
  margin: 0 auto; padding: 1rem; max-inline-size: 40rem; background: var(--paper); color: var(--ink);
  font: 1.125rem/1.5 "Segoe UI", system-ui, sans-serif; overflow-wrap: anywhere;
}
h1, h2, h3 { font-family: Georgia, serif; line-height: 1.25; margin-block: 1.25rem 0.5rem; text-wrap: balance; }
h1 { font-size: 1.6rem; } h2 { font-size: 1.25rem; } h3 { font-size: 1.1rem; }
a { color: var(--tea); text-underline-offset: 0.15em; }
a:focus-visible { outline: 3px solid var(--tea); outline-offset: 2px; }
header, footer { font-size: 1rem; color: var(--soft); }
footer { border-block-start: 1.5px solid var(--ink); margin-block-start: 2rem; padding-block-start: 0.5rem; }
.numbers { list-style: none; padding: 0; margin: 0.25rem 0; display: flex; flex-wrap: wrap; gap: 0.25rem 1.25rem; }
.numbers a, .ways a { font-weight: 700; }
.ways { list-style: none; padding: 0; }
.ways li { background: var(--card); border: 1.5px solid var(--rule); border-radius: 0.25rem; margin-block: 0.5rem; }
.ways a { display: block; padding: 0.7rem 0.9rem; min-block-size: 3rem; text-decoration: none; }
.ways a span { color: var(--soft); font-weight: 400; } .ways a span::before { content: "→ "; }
:dir(rtl) .ways a span::before { content: "← "; }
.once { border-inline-start: 0.4rem solid var(--ink); padding-inline-start: 0.8rem; }
.card { margin-block: 0.5rem; border: 1.5px solid var(--ink); border-inline-start-width: 0.6rem; background: var(--card); padding: 0.25rem 1rem 0.75rem; }
.danger { border-inline-start-color: #c8102e; } .warning { border-inline-start-color: #ff8200; }
.caution { border-inline-start-color: #ffd100; } .notice { border-inline-start-color: #0057b8; }
[lang] > [lang], .second { display: block; color: var(--soft); font-size: 0.95em; }
.from { display: none; scroll-margin-block-start: 100rem; }
.from:target { display: block; }
main:has(.from:target) .lost { display: none; }
li { margin-block: 0.3rem; } dt { font-weight: 700; } dd { margin-inline-start: 1rem; }
@media print {
  body { max-inline-size: none; font-size: 11pt; background: none; } .ways li { break-inside: avoid; }
  nav { display: none; }
}
`
