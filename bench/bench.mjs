// npm run -s bench: the page and the engine. npm run -s bench -- prove: the prover beside others.
const [what = 'page'] = process.argv.slice(2)
if (what === 'page') await import('./page.mjs')
else if (what === 'prove') await import('./prove.mjs')
else {
  process.stderr.write(`There is no bench \`${what}\`: page, prove.\n`)
  process.exitCode = 2
}
