import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { preview } from 'vite'
import { BROWSER_FLAGS, findBrowser } from '../tools/browser.mjs'
import { buildAll } from '../tools/build.mjs'
import { madeUp } from './contacts/write-log.mjs'
import { median } from './figures.mjs'

const RECORDS = 100_000
const RUNS = 5
const GOAL_MS = 500

/** How long a quarter takes to stand on the page, in a log of a hundred thousand records over three years. */
export async function measureQuarter() {
  const outDir = mkdtempSync(join(tmpdir(), 'jarside-quarter-'))
  await buildAll({ outDir, logLevel: 'error' })
  const server = await preview({ preview: { port: 0 }, logLevel: 'error', build: { outDir } })
  const browser = await chromium.launch({ executablePath: findBrowser(), args: BROWSER_FLAGS })
  try {
    const page = await browser.newPage()
    const address = `http://127.0.0.1:${server.httpServer.address().port}/contacts.html`
    await page.goto(`${address}#kind=quarter&year=2024&quarter=1`)
    await page.locator('.nothing').first().waitFor()
    // Straight into the database: taking in is not what is measured.
    await page.evaluate(
      async lines => {
        const opening = indexedDB.open('jarside-contacts')
        await new Promise(resolve => {
          opening.onsuccess = resolve
        })
        const writing = opening.result.transaction('entries', 'readwrite')
        for (const line of lines) writing.objectStore('entries').put(JSON.parse(line))
        await new Promise(resolve => {
          writing.oncomplete = resolve
        })
        opening.result.close()
      },
      [...Array(RECORDS).keys()].map(number => JSON.stringify({ ...madeUp(number * 20), edit: 0 }))
    )
    const times = []
    let contacts = 0
    for (let run = 0; run < RUNS; run++) {
      // From the press to the painted report of another quarter.
      const measured = await page.evaluate(async () => {
        const report = () => document.querySelector('.contacts-report')
        const frame = () => new Promise(resolve => requestAnimationFrame(resolve))
        const before = report().dataset.from
        const started = performance.now()
        document.querySelector('[data-span-move="later"]').click()
        while (report().dataset.from === before) await frame()
        await frame()
        return { ms: performance.now() - started, contacts: Number(report().dataset.contacts) }
      })
      times.push(measured.ms)
      contacts = measured.contacts
    }
    return {
      records: RECORDS,
      inTheQuarter: contacts,
      medianMs: Math.round(median(times)),
      timesMs: times.map(Math.round),
      goalMs: GOAL_MS
    }
  } finally {
    await browser.close()
    await server.close()
    rmSync(outDir, { recursive: true, force: true })
  }
}
