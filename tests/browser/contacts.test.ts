import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium, type Page } from 'playwright-core'
import { afterAll, describe, expect, inject, test } from 'vitest'
import shipped from '../../public/office.json' with { type: 'json' }
import { lineOf } from '../../src/contacts/contact.ts'
import { BROWSER_FLAGS } from '../../tools/browser.mjs'
import { CALL, HOURS } from '../contacts/sample.ts'
import { HAND_TALLY, syntheticCalls } from '../contacts/synthetic-calls.ts'
import { axeFaults } from './axe.ts'
import { databasesOf, entriesOf } from './log-database.ts'
import { address, useVisits } from './visit.ts'

const visit = useVisits()
const folder = mkdtempSync(join(tmpdir(), 'jarside-log-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const fileOf = (name: string, lines: readonly string[]) => {
  const file = join(folder, name)
  writeFileSync(file, lines.map(line => `${line}\n`).join(''))
  return file
}
const QUARTER = '#kind=quarter&year=2026&quarter=4'
const toLog = async (hash = QUARTER) => {
  const opened = await visit({}, { hash: `contacts.html${hash}`, shows: '.figures' })
  return opened.page
}
const takeIn = async (page: Page, file: string) => {
  await page.locator('[name="import"]').setInputFiles(file)
  await page.locator('.take-in-told p').first().waitFor()
}
const figure = (page: Page, name: string) =>
  page.locator(`.screen-alone [data-figure="${name}"] dd`).textContent()
const countsOf = (page: Page, table: string) =>
  page
    .locator(`.screen-alone [data-table="${table}"] tbody tr`)
    .evaluateAll(rows =>
      Object.fromEntries(
        rows.map(row => [
          row.getAttribute('data-key'),
          Number(row.querySelector('.counts-number')?.textContent?.replace(',', ''))
        ])
      )
    )
const downloaded = async (page: Page, action: string) => {
  const download = page.waitForEvent('download')
  await page.locator(`[data-action="${action}"]`).click()
  let text = ''
  for await (const part of await (await download).createReadStream()) text += part
  return text
}

describe('the log and its reports', () => {
  test('200 calls of another desk come to the hand tally, go out as they came, and axe finds nothing', async () => {
    const page = await toLog()
    const lines = syntheticCalls().map(lineOf)
    await takeIn(page, fileOf('desk.jsonl', [...lines, '{"name":"Robin"}', lines[0] ?? '']))
    const told = await page.locator('.take-in-told').textContent()
    expect(told).toContain('202 rows. New: 200. Edited: 0. Known already: 1.')
    expect(told).toContain('Not readable: 1.')
    expect(told).toContain('Line 201: `kind`')
    await page.locator(`[data-contacts="${HAND_TALLY.contacts}"]`).waitFor()
    for (const [table, counts] of Object.entries(HAND_TALLY.tables)) {
      expect(await countsOf(page, table), table).toEqual(counts)
    }
    expect(await figure(page, 'minutes')).toBe('1,142')
    expect(await axeFaults(page)).toEqual([])

    const out = (await downloaded(page, 'lines')).trim().split('\n')
    expect([...out].sort()).toEqual([...lines].sort())

    // Hidden unless somebody says otherwise; on paper too.
    expect(await downloaded(page, 'csv')).toContain(',reach,indirect,Indirect,hidden\r\n')
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.screen-alone').isVisible()).toBe(false)
    const paper = page.locator('.print-alone [data-table="reach"]')
    expect(await paper.textContent()).toContain('Indirecthidden')
    await page.emulateMedia({ media: 'screen' })
    await page.locator('[name="hide"]').uncheck()
    expect(await downloaded(page, 'csv')).toContain(',reach,indirect,Indirect,4\r\n')
  })

  test('September 30 and October 1 lie in two fiscal years and one calendar year', async () => {
    const page = await toLog('#kind=fiscal-year&year=2027')
    const on = (date: string, at: number) =>
      lineOf({ ...CALL, date, id: CALL.id.replace(/...$/, `e0${at}`) })
    await takeIn(page, fileOf('edge.jsonl', [on('2026-09-30', 1), on('2026-10-01', 2)]))
    await page.locator('[data-contacts="1"]').waitFor()
    await page.locator('[data-span="calendar-year"]').click()
    await page.locator('[data-contacts="2"]').waitFor()
    await page.locator('[data-span="fiscal-year"]').click()
    await page.locator('[data-span-move="earlier"]').click()
    await page.locator('[data-contacts="0"], [data-contacts="1"]').waitFor()
  })

  test('what is pending is resolved, and the version before stays until it was seen', async () => {
    const page = await toLog()
    await takeIn(page, fileOf('one.jsonl', [lineOf({ ...CALL, state: 'pending' })]))
    await page.locator('[data-action="resolve"]').click()
    await page.locator('[data-action="seen"]').waitFor()
    expect(await page.locator('.edits del').count()).toBe(1)
    expect(await entriesOf(page)).toMatchObject([{ state: 'resolved', edit: 1 }])
    await page.locator('[data-action="seen"]').click()
    await page.locator('.edits').waitFor({ state: 'detached' })
    // The old version comes along with a file once more: it was seen.
    await takeIn(page, fileOf('one.jsonl', [lineOf({ ...CALL, state: 'pending' })]))
    expect(await page.locator('.edits').count()).toBe(0)
  })

  test('an event counts by its heads, hours by the volunteer, in Spanish as well', async () => {
    const page = await toLog(`${QUARTER}&lang=es`)
    await page.locator('h1', { hasText: 'Registro e informes' }).waitFor()
    await takeIn(page, fileOf('hours.jsonl', [lineOf(HOURS)]))
    await page.locator('[name="heads"]').fill('40')
    await page.locator('[name="event-minutes"]').fill('90')
    await page.locator('[name="event-minutes"]').press('Enter')
    await page.locator('.event-form [role="status"]', { hasText: '40 personas' }).waitFor()
    expect(await entriesOf(page)).toMatchObject([{ kind: 'hours' }, { method: 'event', count: 40 }])
    expect(await figure(page, 'hours')).toBe('2.5')
    expect(await axeFaults(page)).toEqual([])
  })

  test('records older than the office keeps are not taken in', async () => {
    const page = await toLog()
    await takeIn(page, fileOf('old.jsonl', [lineOf({ ...CALL, date: '2001-02-03' })]))
    expect(await page.locator('.take-in-told').textContent()).toContain('Too old to keep: 1.')
    expect(await entriesOf(page)).toEqual([])
  })
})

test('a month that is over goes, and its sums stay', async () => {
  const { log: _, ...without } = shipped
  const { page } = await visit(
    {},
    {
      hash: 'contacts.html#kind=calendar-year&year=2001',
      shows: '.figures',
      before: opened =>
        opened.route('**/office.json', route => route.fulfill({ json: without }), { times: 1 })
    }
  )
  await takeIn(page, fileOf('old.jsonl', [lineOf({ ...CALL, date: '2001-02-03' })]))
  await page.locator('[data-contacts="1"]').waitFor()
  expect(await entriesOf(page)).toHaveLength(1)
  await page.reload()
  await page.locator('p', { hasText: 'only sums of whole months are kept' }).waitFor()
  await page.locator('[data-contacts="1"]').waitFor()
  expect(await entriesOf(page)).toEqual([])
  const { sums } = (await databasesOf(page))['jarside-contacts'] ?? {}
  expect(sums).toMatchObject([{ month: '2001-02', report: { contacts: 1 } }])
})

describe('a browser that is killed', () => {
  test('has on its disk what the sheet said is recorded', async () => {
    const found = inject('browser')
    if ('missing' in found) throw new Error(found.missing)
    const profile = join(folder, 'profile')
    const open = () =>
      chromium.launchPersistentContext(profile, {
        executablePath: found.program,
        args: BROWSER_FLAGS
      })
    const before = await open()
    const page = await before.newPage()
    await page.goto(`${address()}desk.html`)
    await page.locator('.desk .question').waitFor()
    await page.keyboard.press('F2')
    await page.locator('[name="topic"]:focus').waitFor()
    await page.keyboard.press('c')
    await page.keyboard.press('Enter')
    await page.locator('.record-done p').waitFor()
    const session = await before.browser()?.newBrowserCDPSession()
    const { processInfo = [] } = (await session?.send('SystemInfo.getProcessInfo')) ?? {}
    const main = processInfo.find(({ type }) => type === 'browser')
    if (main === undefined) throw new Error('the browser does not say which process it is')
    const closed = new Promise(resolve => before.once('close', resolve))
    process.kill(main.id, 'SIGKILL')
    await closed

    const after = await open()
    try {
      const again = await after.newPage()
      await again.goto(`${address()}contacts.html`)
      await again.locator('[data-contacts="1"]').waitFor()
      expect(await entriesOf(again)).toMatchObject([{ topic: 'canning' }])
    } finally {
      await after.close()
    }
  })
})

describe('what a kiosk on this device counted', () => {
  const COUNTS = {
    '2026-11-28 en kombucha-jar 1 0123456789ab likely-mold/': 3,
    '2026-11-28 es kombucha-jar 1 0123456789ab referred': 2,
    '2026-11-29 en abandoned': 4
  }
  const counted = async () => {
    const page = await toLog()
    await page.evaluate(
      counts => localStorage.setItem('jarside-kiosk-counts', JSON.stringify(counts)),
      COUNTS
    )
    await page.reload()
    await page.locator('.contacts-kiosk').waitFor()
    return page
  }

  test('is taken into the log once, as indirect contacts', async () => {
    const page = await counted()
    expect(await page.locator('.contacts-kiosk').textContent()).toMatch(/: 5\..*: 4\./)
    expect(await axeFaults(page)).toEqual([])
    await page.locator('[data-action="take-kiosk"]').click()
    await page.getByText('5 outcomes taken in').waitFor()
    expect(await page.evaluate(() => localStorage.getItem('jarside-kiosk-counts'))).toBeNull()
    const entries = await entriesOf(page)
    expect(entries.map(({ count, direct, referred }) => [count, direct, referred]).sort()).toEqual([
      [2, false, true],
      [3, false, false]
    ])
    await page.reload()
    await page.locator('.figures').first().waitFor()
    expect(await page.locator('.contacts-kiosk').count()).toBe(0)
  })

  test('stays counted where the log cannot be opened, and that is said', async () => {
    const page = await counted()
    await page.evaluate(() => {
      IDBObjectStore.prototype.add = IDBObjectStore.prototype.put = () => {
        throw new DOMException('full', 'QuotaExceededError')
      }
    })
    await page.locator('[data-action="take-kiosk"]').click()
    await page.locator('.contacts-kiosk').getByText('Not saved').waitFor()
    const kept = await page.evaluate(() => localStorage.getItem('jarside-kiosk-counts'))
    expect(JSON.parse(kept ?? '{}')).toEqual(COUNTS)
  })
})
