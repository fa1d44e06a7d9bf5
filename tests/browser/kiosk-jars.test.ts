import jsQR from 'jsqr'
import type { Page } from 'playwright-core'
import { PNG } from 'pngjs'
import { describe, expect, test } from 'vitest'
import words from '../../locales/en/kombucha-jar.json' with { type: 'json' }
import office from '../../public/office.json' with { type: 'json' }
import { JARS } from '../helpers/jars.mjs'
import { axeFaults } from './axe.ts'
import { KIOSK, keptBy, SMALL, smallForFingers, touchLanguage, verdictsShown } from './kiosk.ts'
import { play, TREE } from './play.ts'
import { SAID } from './said.ts'
import { useVisits } from './visit.ts'

/** What a phone's camera reads in the square. */
async function scanned(page: Page): Promise<string | undefined> {
  const picture = await page.locator('.take-home .qr').screenshot()
  const { data, width, height } = PNG.sync.read(picture)
  return jsQR(new Uint8ClampedArray(data), width, height)?.data
}

/** What an address shows to whoever opens it elsewhere. */
async function seenOn(phone: Page, taken: string): Promise<readonly (string | null)[]> {
  expect(taken).toMatch(/^https:\/\/jarside\.larkspur\.example\/#\//)
  await phone.evaluate(() => {
    location.hash = '#/'
  })
  await phone.locator('.choose').waitFor()
  await phone.evaluate(hash => {
    location.hash = hash
  }, new URL(taken).hash)
  await phone.locator('.outcome, .question').first().waitFor()
  return verdictsShown(phone)
}

const NOTHING_KEPT = {
  // What staff settled: see `kiosk-staff.test.ts`.
  local: ['jarside-kiosk-settings'],
  session: 0,
  cookies: '',
  databases: [],
  // Beside the files of the page itself.
  cached: [],
  address: '/kiosk'
}

/** A day, a language, the tree and its edition, and a verdict on batch and container, or that it was referred. */
const A_COUNT = /^\d{4}-\d{2}-\d{2} en kombucha-jar \d+ [0-9a-f]{12} (?:referred|[a-z-]*\/[a-z-]*)$/
const countsOn = (page: Page): Promise<Record<string, number>> =>
  page.evaluate(() => JSON.parse(localStorage.getItem('jarside-kiosk-counts') ?? '{}'))

describe('on the kiosk', () => {
  const visit = useVisits()

  test('every jar has its outcome, large targets, no way out, and leaves no trace', async () => {
    const { page } = await visit({ viewport: SMALL }, KIOSK)
    const { page: phone } = await visit()
    const { entries } = await keptBy(page)
    let counted = 0
    for (const [name, { first, also = [], use }] of Object.entries(SAID)) {
      const faults: string[] = []
      await touchLanguage(page)
      await play(page, JARS[name] ?? {}, async screen => {
        await page.locator('h1:focus').waitFor()
        const found = [...(await axeFaults(page, 'kiosk')), ...(await smallForFingers(page))]
        faults.push(...found.map(fault => `${screen}: ${fault}`))
        faults.push(...(await page.locator('#page [href]').allTextContents()))
      })
      expect(faults, name).toEqual([])
      expect(await verdictsShown(page), name).toEqual([first, ...also])
      const said = await page.locator('.screen .use').allTextContents()
      expect(said, name).toEqual(use === null ? [] : [words.use[use]])
      expect(await keptBy(page), name).toEqual({ ...NOTHING_KEPT, entries })
      counted += 1
      const counts = await countsOn(page)
      expect(
        Object.values(counts).reduce((sum, each) => sum + each, 0),
        name
      ).toBe(counted)
      for (const line of Object.keys(counts)) expect(line).toMatch(A_COUNT)

      // An emergency stands alone: only taking it back or the clock ends it.
      if (use === null) {
        await page.reload()
        continue
      }
      const square = (await scanned(page)) ?? 'nothing read'
      const typed = await page.locator('.take-home-address').textContent()
      // Where somebody needs help the jar alone would say less: the questions are asked again.
      const told = first === 'doctor-today' ? [] : [first, ...also]
      expect(await seenOn(phone, square), name).toEqual(told)
      expect(await seenOn(phone, `https://${typed}`), name).toEqual(told)
      if (told.length === 0) expect(square).toBe(`${office.address}#/${TREE}`)
      else expect(square, name).toMatch(/@[0-9a-f]{6}\//)
      await page.locator('[data-action="done"]').click()
      await page.locator('.start').waitFor()
    }
  })
})
