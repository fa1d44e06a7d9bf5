// npm run -s bench: the page and the engine. npm run -s bench -- prove: the prover beside others. -- science: the models. -- commands: the command line. -- tally: the logs of several desks. -- quarter: a report in the browser.
const [what = 'page'] = process.argv.slice(2)
if (what === 'page') await import('./page.mjs')
else if (what === 'prove') await import('./prove.mjs')
else if (what === 'science') {
  const { measureScience } = await import('./science.mjs')
  process.stdout.write(`${JSON.stringify(await measureScience(), null, 2)}\n`)
} else if (what === 'commands') {
  const { measureCommands } = await import('./commands.mjs')
  process.stdout.write(`${JSON.stringify(measureCommands(), null, 2)}\n`)
} else if (what === 'tally') {
  const { measureTally } = await import('./tally.mjs')
  process.stdout.write(`${JSON.stringify(await measureTally(), null, 2)}\n`)
} else if (what === 'quarter') {
  const { measureQuarter } = await import('./quarter.mjs')
  process.stdout.write(`${JSON.stringify(await measureQuarter(), null, 2)}\n`)
} else {
  process.stderr.write(
    `There is no bench \`${what}\`: page, prove, science, commands, tally, quarter.\n`
  )
  process.exitCode = 2
}
