// npm run -s bench: the page and the engine. npm run -s bench -- prove: the prover beside others. -- science: the models.
const [what = 'page'] = process.argv.slice(2)
if (what === 'page') await import('./page.mjs')
else if (what === 'prove') await import('./prove.mjs')
else if (what === 'science') {
  const { measureScience } = await import('./science.mjs')
  process.stdout.write(`${JSON.stringify(await measureScience(), null, 2)}\n`)
} else {
  process.stderr.write(`There is no bench \`${what}\`: page, prove, science.\n`)
  process.exitCode = 2
}
