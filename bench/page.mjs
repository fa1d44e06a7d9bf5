// Measures the page and the engine: npm run -s bench. JSON on stdout, a small table on stderr.
import { mkdtempSync, rmSync } from 'node:fs'
import { cpus, tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { build } from 'vite'
import { BROWSER_FLAGS, findBrowser } from '../.ci/browser.mjs'
import { root } from '../.ci/install.mjs'
import { measureAnswers } from './answering.mjs'
import { serveBrotli } from './brotli-server.mjs'
import { measureEngine } from './engine.mjs'
import { measureFirstQuestion } from './first-question.mjs'

const engine = await measureEngine()
const folder = mkdtempSync(join(tmpdir(), 'jarside-bench-'))
await build({ root, logLevel: 'error', build: { outDir: folder, emptyOutDir: true } })
const server = await serveBrotli(folder)
const browser = await chromium.launch({ executablePath: findBrowser(), args: BROWSER_FLAGS })
try {
  const firstQuestion = await measureFirstQuestion(browser, server.address)
  const answering = await measureAnswers(browser, server.address)
  const machine = { node: process.version, browser: browser.version(), cores: cpus().length }
  const figures = {
    on: new Date().toISOString().slice(0, 10),
    machine,
    firstQuestion,
    answering,
    engine
  }
  process.stdout.write(`${JSON.stringify(figures, null, 2)}\n`)
  process.stderr.write(`${table(figures)}\n`)
} finally {
  await browser.close()
  await server.close()
  rmSync(folder, { recursive: true, force: true })
}

function table({ firstQuestion: first, answering, engine: { loadMs, trees } }) {
  const kilobytes = bytes => `${(bytes / 1000).toFixed(1)} kB`
  const { bytes } = first
  const rows = [
    ['first question: all files', `${kilobytes(bytes.all)} in ${bytes.requests} requests`],
    ...Object.entries(bytes.byKind).map(([kind, n]) => [`  ${kind}`, kilobytes(n)]),
    ['  there before the question', kilobytes(bytes.beforeTheQuestion)],
    ['first screen, slow network and CPU', `${first.slowNetworkFirstScreenMs} ms`],
    ['first question, slow network and CPU', `${first.slowNetworkMs} ms`],
    ['first question, slow CPU alone', `${first.cpuOnlyMs} ms`],
    ['answer to next screen, slow CPU, median', `${answering.medianMs} ms`],
    ['  95th percentile', `${answering.p95Ms} ms (${answering.answers} answers)`],
    ['  the same with nothing to draw', `${answering.idleMs} ms`],
    ['load all files', `${loadMs} ms`],
    ...Object.entries(trees).flatMap(([id, tree]) => [
      [`${id}: compile diagrams`, `${tree.compileMs} ms`],
      ['  prove all', `${tree.proveMs} ms (${tree.proved} of ${tree.properties} proved)`],
      ['  vertices', `${tree.vertices}`],
      ['  sets of answers', tree.answerSets]
    ])
  ]
  return rows.map(([name, value]) => `${name.padEnd(42)}${value}`).join('\n')
}
