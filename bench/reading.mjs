// What a caller has to read, tap and scroll before the verdict, against the goals: npm run -s reading.
// Options, each any number of times: --caller, --place, --language; --write <file> writes the table.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { chromium } from 'playwright-core'
import { loadProject } from '../src/cli/read-project.ts'
import { BROWSER_FLAGS, findBrowser } from '../tools/browser.mjs'
import { buildAll } from '../tools/build.mjs'
import { serveBrotli } from './brotli-server.mjs'
import { answerOf, callers } from './reading/callers.ts'
import { breachesOf } from './reading/limits.ts'
import { readingOf } from './reading/measure.ts'
import { needlessIn } from './reading/needless.ts'
import { hostPage, PLACES, play } from './reading/play.mjs'
import { breachLine, document } from './reading/table.ts'

const many = { type: 'string', multiple: true }
const { values } = parseArgs({
  options: { caller: many, place: many, language: many, write: { type: 'string' } }
})
process.env.NODE_ENV = 'production'

const { loaded } = await loadProject()
// How words are counted is known of these two.
const LANGUAGES = ['en', 'es']
const wanted = (all, named = all) => {
  const unknown = named.filter(each => !all.includes(each))
  if (unknown.length === 0) return named
  process.stderr.write(`There is no ${unknown.join(', ')}: ${all.join(', ')}.\n`)
  process.exit(2)
}
const all = callers()
const ids = wanted(
  all.map(({ id }) => id),
  values.caller
)
const places = wanted(Object.keys(PLACES), values.place)
const languages = wanted(LANGUAGES, values.language)

const folder = mkdtempSync(join(tmpdir(), 'jarside-reading-'))
await buildAll({ outDir: folder, logLevel: 'error' })
for (const { id } of loaded.trees) {
  for (const language of LANGUAGES) {
    writeFileSync(join(folder, `host-${id}-${language}.html`), hostPage(id, language))
  }
}
const server = await serveBrotli(folder)
const browser = await chromium.launch({ executablePath: findBrowser(), args: BROWSER_FLAGS })
const readings = []
try {
  for (const place of places) {
    for (const language of languages) {
      for (const caller of all.filter(({ id }) => ids.includes(id))) {
        readings.push(await read(caller, place, language))
      }
    }
  }
} finally {
  await browser.close()
  await server.close()
  rmSync(folder, { recursive: true, force: true })
}

const text = `${document(readings, new Date().toISOString().slice(0, 10))}\n`
process.stdout.write(text)
if (values.write !== undefined) writeFileSync(values.write, text)
const breaches = breachesOf(readings)
for (const breach of breaches) process.stderr.write(`${breachLine(breach)}\n`)
process.exitCode = breaches.length > 0 ? 1 : 0

async function read(caller, place, language) {
  const tree = loaded.trees.find(({ id }) => id === caller.tree)
  const figures = {}
  const answerTo = observation => {
    figures[observation] = answerOf(caller, tree, tree.observations[observation])
    return figures[observation]
  }
  const walk = { caller: caller.id, place, language }
  try {
    const says = language === 'es' ? caller.dice : caller.says
    const screens = await play(browser, server.address, { ...walk, tree: tree.id, says, answerTo })
    return readingOf(walk, screens, needlessIn(tree, figures))
  } catch (error) {
    throw new Error(`${Object.values(walk).join(', ')}: ${error.message}`, { cause: error })
  }
}
