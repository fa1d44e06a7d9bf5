// npm run -s bench: the page and the engine. npm run -s bench -- <part>: another part, of those below.
// With --record what was measured is kept in bench/measured, and docs/measured.md is written from all that is.
import { parseArgs } from 'node:util'

/** The parts that give their figures, so that they can be recorded. */
const PARTS = {
  page: async () => (await import('./page.mjs')).measurePage(),
  commands: async () => (await import('./commands.mjs')).measureCommands(),
  prove: async () => (await import('./prove.mjs')).measureProofs(),
  science: async () => (await import('./science.mjs')).measureScience(),
  sheets: async () => (await import('./sheets.mjs')).measureSheets(),
  tally: async () => (await import('./tally.mjs')).measureTally(),
  quarter: async () => (await import('./quarter.mjs')).measureQuarter()
}

const { values, positionals } = parseArgs({
  options: { record: { type: 'boolean', default: false } },
  allowPositionals: true
})
const [part = 'page'] = positionals
if (Object.hasOwn(PARTS, part)) {
  const figures = await PARTS[part]()
  process.stdout.write(`${JSON.stringify(figures, null, 2)}\n`)
  if (values.record) {
    const { record } = await import('./record.mjs')
    process.stderr.write(`${record(part, figures)} is written.\n`)
  }
} else {
  process.stderr.write(`There is no bench \`${part}\`: ${Object.keys(PARTS).join(', ')}.\n`)
  process.exitCode = 2
}
