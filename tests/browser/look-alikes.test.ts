import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { JARS } from '../helpers/jars.mjs'
import { axeFaults } from './axe.ts'
import { KIOSK, touchLanguage } from './kiosk.ts'
import { begin, play, playOn } from './play.ts'
import { useVisits } from './visit.ts'

const visit = useVisits()
const at = (query: string) => ({ hash: `look-alikes.html#${query}` })
/** A photo with a place written in it would do as well: the page keeps points of color alone. */
const PHOTO = 'docs/pictures/all-pictures.png'
const jar = JARS['white-fuzz'] ?? {}

describe('the page of look-alikes', () => {
  test('has every pair, each without a fault for assistive programs', async () => {
    const { page } = await visit({}, at(''))
    const pairs = await page
      .locator('[data-choose-pair]')
      .evaluateAll(buttons => buttons.map(button => button.getAttribute('data-choose-pair')))
    expect(pairs.length).toBeGreaterThanOrEqual(12)
    for (const pair of pairs) {
      await page.locator(`[data-choose-pair="${pair}"]`).click()
      await page.locator(`[data-pair="${pair}"]`).waitFor()
      expect(await page.locator('.look-alike-one svg').count()).toBeGreaterThanOrEqual(2)
      const named = page.locator('.look-alike-one [role="img"]')
      const names = await named.evaluateAll(all => all.map(one => one.getAttribute('aria-label')))
      expect(names.filter(name => !name)).toEqual([])
    }
    expect(await axeFaults(page)).toEqual([])
  })

  test('draws both at one scale, side by side on a phone too', async () => {
    const { page } = await visit(
      { viewport: { width: 360, height: 740 } },
      at('pair=strands-and-mold&lang=es')
    )
    const boxes = await page
      .locator('.look-alike-one .from-above svg')
      .evaluateAll(all => all.map(one => one.getBoundingClientRect().toJSON()))
    expect(boxes).toHaveLength(2)
    expect(boxes[0].width).toBeCloseTo(boxes[1].width, 0)
    expect(boxes[0].top).toBeCloseTo(boxes[1].top, 0)
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360)
    expect(await axeFaults(page)).toEqual([])
  })
})

describe('a photo of one’s own', () => {
  test('stands beside the drawings, goes nowhere and is gone on leaving', async () => {
    const { page, requests } = await visit({}, at('pair=new-film-and-early-mold'))
    const before = requests.length
    await page.locator('[data-photo="file"]').setInputFiles(PHOTO)
    const canvas = page.locator('.own-photo-picture')
    await canvas.waitFor()
    await expect
      .poll(() =>
        canvas.evaluate((one: HTMLCanvasElement) => {
          const drawn = one.getContext('2d')?.getImageData(0, 0, one.width, one.height)
          return new Set(drawn?.data).size
        })
      )
      .toBeGreaterThan(20)
    expect(await page.locator('[data-photo="file"]').inputValue()).toBe('')
    expect(await axeFaults(page)).toEqual([])
    await page.locator('.own-photo-closer input').nth(2).check()
    expect(await canvas.getAttribute('class')).toContain('closer-3')
    expect(requests.slice(before)).toEqual([])
    const kept = await page.evaluate(async () => ({
      local: localStorage.length,
      session: sessionStorage.length,
      bases: (await indexedDB.databases()).length
    }))
    expect(kept).toEqual({ local: 0, session: 0, bases: 0 })
    await page.evaluate(() => dispatchEvent(new Event('pagehide')))
    await canvas.waitFor({ state: 'detached' })
  })

  test('a file that is none is refused in one sentence, and can be replaced', async () => {
    const { page } = await visit({}, at(''))
    const file = { name: 'notes.txt', mimeType: 'text/plain', buffer: Buffer.from('day 9, sour') }
    await page.locator('[data-photo="file"]').setInputFiles(file)
    await page.locator('.own-photo .error').waitFor()
    await page.locator('[data-photo="file"]').setInputFiles(PHOTO)
    await page.locator('.own-photo-picture').waitFor()
    expect(await page.locator('.own-photo .error').count()).toBe(0)
    await page.locator('[data-photo="remove"]').click()
    await page.locator('.own-photo-picture').waitFor({ state: 'detached' })
  })

  test('nothing in the page reads where or when a photo was taken', () => {
    const source = readFileSync('src/places/look-alikes/own-photo.tsx', 'utf8')
    expect(source).not.toMatch(/exif|arrayBuffer|FileReader|\.text\(\)|stream\(\)|createObjectURL/i)
  })
})

describe('a question that needs them opens its look-alikes', () => {
  test('on the page, with the way to a photo', async () => {
    const { page } = await visit()
    await begin(page)
    await playOn(page, jar, 'surface-texture')
    await page.locator('.look-alikes-here > summary').click()
    await page.locator('[data-pair="new-film-and-early-mold"]').waitFor()
    const link = await page.locator('.look-alikes-here a').getAttribute('href')
    expect(link).toContain('look-alikes.html')
    expect(await axeFaults(page)).toEqual([])
  })

  test('on the kiosk without one: it leads to no other page', async () => {
    const { page } = await visit({}, KIOSK)
    await touchLanguage(page)
    await begin(page)
    await playOn(page, jar, 'surface-texture')
    await page.locator('.look-alikes-here > summary').click()
    await page.locator('[data-pair="new-film-and-early-mold"]').waitFor()
    expect(await page.locator('.look-alikes-here a, input[type="file"]').count()).toBe(0)
  })
})

describe('what callers ask afterwards', () => {
  test('is answered under the outcome, with its sources', async () => {
    const { page } = await visit()
    await play(page, jar)
    const scooping = page.locator('[data-follow-up="scooping-it-off"]')
    await scooping.locator('summary').click()
    expect(await scooping.textContent()).toMatch(/No\..+Sources?:/s)
    expect(await axeFaults(page)).toEqual([])
  })
})
