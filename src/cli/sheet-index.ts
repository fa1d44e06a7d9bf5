import type { ManifestEntry } from './write-sheets.ts'

/** A page that lists the sheets in its folder, by tree and kind, with a link to each PDF and HTML. */
export function indexOfSheets(sheets: readonly ManifestEntry[]): string {
  const trees = [...new Set(sheets.map(({ tree }) => tree))].sort()
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Sheets</title>
<style>
body { max-width: 60rem; margin: 2rem auto; padding: 0 1rem; font: 1.1rem/1.5 sans-serif; }
table { border-collapse: collapse; width: 100%; }
th, td { padding: 0.3rem 0.8rem 0.3rem 0; border-bottom: 1px solid #bbb; text-align: left; }
</style>
</head>
<body>
<h1>Sheets</h1>
${trees
  .map(tree =>
    partOf(
      tree,
      sheets.filter(sheet => sheet.tree === tree)
    )
  )
  .join('\n')}
</body>
</html>
`
}

function partOf(tree: string, sheets: readonly ManifestEntry[]): string {
  const [{ edition, review } = { edition: 0, review: 'draft' }] = sheets
  return `<h2>${tree}</h2>
<p>Edition ${edition}, ${review === 'draft' ? 'draft: no specialist has signed it' : 'signed'}.</p>
<table>
<thead><tr><th scope="col">Sheet</th><th scope="col">Language</th><th scope="col">Files</th></tr></thead>
<tbody>
${sheets.map(rowOf).join('\n')}
</tbody>
</table>`
}

const rowOf = ({ name, sheet, verdict, language, svg }: ManifestEntry): string =>
  `<tr><th scope="row">${verdict ?? sheet}</th><td>${language}</td><td><a href="${name}.pdf">PDF</a> <a href="${name}.html">HTML</a>${svg === undefined ? '' : ` <a href="${name}.svg">SVG</a>`}</td></tr>`
