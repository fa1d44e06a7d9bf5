import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { cpus, tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { BROWSER_FLAGS, findBrowser } from '../tools/browser.mjs'
import { buildAll } from '../tools/build.mjs'
import { measureAnswers } from './answering.mjs'
import { serveBrotli } from './brotli-server.mjs'
import { measureEngine } from './engine.mjs'
import { measureFirstQuestion } from './first-question.mjs'

/** Somebody else's page with nothing of its own to load. */
const HOST = `<!doctype html><html lang="en"><meta charset="utf-8"><title>Host</title>
<script type="module" src="./jarside-walk.js"></script>
<h1>Food at home</h1><jarside-walk tree="kombucha-jar"></jarside-walk>`

/** The page and the engine; a small table of them on stderr. */
export async function measurePage() {
  const engine = await measureEngine()
  const folder = mkdtempSync(join(tmpdir(), 'jarside-bench-'))
  await buildAll({ outDir: folder, logLevel: 'error' })
  writeFileSync(join(folder, 'host.html'), HOST)
  const server = await serveBrotli(folder)
  const browser = await chromium.launch({ executablePath: findBrowser(), args: BROWSER_FLAGS })
  try {
    const firstQuestion = await measureFirstQuestion(browser, `${server.address}#/kombucha-jar`)
    const embedded = await measureFirstQuestion(browser, `${server.address}host.html`)
    const answering = await measureAnswers(browser, server.address)
    const machine = { node: process.version, browser: browser.version(), cores: cpus().length }
    const figures = {
      on: new Date().toISOString().slice(0, 10),
      machine,
      firstQuestion,
      embedded,
      answering,
      engine
    }
    process.stderr.write(`${table(figures)}\n`)
    return figures
  } finally {
    await browser.close()
    await server.close()
    rmSync(folder, { recursive: true, force: true })
  }
}

function table({ firstQuestion: first, embedded, answering, engine: { loadMs, trees } }) {
  const kilobytes = bytes => `${(bytes / 1000).toFixed(1)} kB`
  const { bytes } = first
  const rows = [
    [
      'first question and the rest: all files',
      `${kilobytes(bytes.all)} in ${bytes.requests} requests`
    ],
    ...Object.entries(bytes.byKind).map(([kind, n]) => [`  ${kind}`, kilobytes(n)]),
    ['  there before the question', kilobytes(bytes.beforeTheQuestion)],
    ['first screen, slow network and CPU', `${first.slowNetworkFirstScreenMs} ms`],
    ['first question, slow network and CPU', `${first.slowNetworkMs} ms`],
    ['first question, slow CPU alone', `${first.cpuOnlyMs} ms`],
    ['embedded: there before the question', kilobytes(embedded.bytes.beforeTheQuestion)],
    ['  first question, slow network and CPU', `${embedded.slowNetworkMs} ms`],
    ['  first question, slow CPU alone', `${embedded.cpuOnlyMs} ms`],
    ['answer to next screen, slow CPU, median', `${answering.medianMs} ms`],
    ['  95th percentile', `${answering.p95Ms} ms (${answering.answers} answers)`],
    ['  the same with nothing to draw', `${answering.idleMs} ms`],
    ['  95th percentile in times of that', `${answering.timesIdle} (goal ${answering.goal})`],
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
