import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { JARS } from '../helpers/jars.mjs'
import { axeFaults } from './axe.ts'
import { KIOSK, LYING, smallForFingers, touchLanguage } from './kiosk.ts'
import { askedOn, begin, play, playOn } from './play.ts'
import { useVisits } from './visit.ts'

const MINUTE = 60_000
const jar = JARS['new-film'] ?? {}
const timed = { ...KIOSK, before: (page: Page) => page.clock.install() }
const warning = (page: Page) => page.locator('dialog[open]')
const spoken = (page: Page) => page.locator('[aria-live="polite"]').textContent()

/** Scrolls and waits until the page has heard of it: frames are drawn by the real clock, not by the installed one. */
const scrolled = (page: Page, to: number) =>
  page.locator('.main').evaluate(
    (main, at) =>
      new Promise(heard => {
        main.addEventListener('scroll', heard, { once: true })
        main.scrollTo(0, at)
      }).then(() => undefined),
    to
  )

/**
 * Lets time pass in which nobody does anything. A scroll that a click or a focus began is heard in the next frame
 * only, which the real clock draws: it has to be over first, else it counts as somebody there. Of a frame's steps,
 * observers of what is in sight come after the scrolls.
 */
async function sitStill(page: Page, milliseconds: number): Promise<void> {
  await page.evaluate(async () => {
    const frame = () =>
      new Promise<void>(drawn => {
        const observer = new IntersectionObserver(() => {
          observer.disconnect()
          drawn()
        })
        observer.observe(document.body)
      })
    await frame()
    await frame()
  })
  await page.clock.runFor(milliseconds)
}

/** From here on time passes by `sitStill` alone: a slow machine's own seconds are not counted. */
async function stopClock(page: Page): Promise<void> {
  await page.clock.pauseAt(await page.evaluate(() => Date.now() + 1000))
}

describe('a visitor who sits still', () => {
  const visit = useVisits()

  test('at an outcome is warned after a minute and wiped after two', async () => {
    const { page } = await visit({ viewport: LYING }, timed)
    await touchLanguage(page, 'es')
    await play(page, jar)
    await stopClock(page)
    await sitStill(page, MINUTE - 5_000)
    expect(await warning(page).count()).toBe(0)
    await sitStill(page, 7_000)
    await warning(page).waitFor()
    expect(await axeFaults(page, 'kiosk')).toEqual([])
    expect(await smallForFingers(page)).toEqual([])
    const heard = [await spoken(page)]
    for (const seconds of [10, 25, 15]) {
      await sitStill(page, seconds * 1000)
      heard.push(await spoken(page))
    }
    expect(heard.map(text => /\d+/.exec(text ?? '')?.[0])).toEqual(['60', '60', '30', '10'])
    await sitStill(page, 10_000)

    await page.locator('.start').waitFor()
    expect(await page.locator('html').getAttribute('lang')).toBe('en')
    expect(await page.locator('.outcome, .question, .bead, .sheet, dialog').count()).toBe(0)
    // The next visitor's fields are empty. A screen comes after a timer, so time has to pass again.
    await page.clock.resume()
    await touchLanguage(page)
    await begin(page)
    expect(await page.locator('input:checked, button.bead').count()).toBe(0)
  })

  test('keeps the answers by one touch anywhere, which presses nothing else', async () => {
    const { page } = await visit({ viewport: LYING, hasTouch: true }, timed)
    await touchLanguage(page)
    await begin(page)
    await playOn(page, jar, 'surface-texture')
    const card = await page.locator('.card').first().boundingBox()
    for (let time = 0; time < 12; time++) {
      await sitStill(page, MINUTE + 2_000)
      await warning(page).waitFor()
      await page.touchscreen.tap((card?.x ?? 0) + 40, (card?.y ?? 0) + 40)
      await warning(page).waitFor({ state: 'hidden' })
    }
    expect(await askedOn(page)).toBe('surface-texture')
    expect(await page.locator('button.bead').count()).toBe(3)
  })

  test('meets a dialog that holds the focus, yields to Escape and gives the focus back', async () => {
    const { page } = await visit({}, timed)
    await touchLanguage(page)
    await begin(page)
    await page.locator('[data-answer="none"]').focus()
    await sitStill(page, MINUTE + 2_000)
    await warning(page).waitFor()
    const held = () => page.evaluate(() => document.activeElement?.closest('dialog, body')?.tagName)
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('BUTTON')
    expect(await held()).toBe('DIALOG')
    for (let tabs = 0; tabs < 4; tabs++) {
      await page.keyboard.press('Tab')
      const outside = page.locator('.screen :focus')
      expect(await outside.count()).toBe(0)
    }
    await page.keyboard.press('Escape')
    await warning(page).waitFor({ state: 'hidden' })
    expect(await page.locator('[data-answer="none"]:focus').count()).toBe(1)
  })

  test('but types or scrolls is not disturbed', async () => {
    const { page } = await visit({ viewport: LYING }, timed)
    await touchLanguage(page)
    await begin(page)
    // A screen that is longer than the glass.
    await playOn(page, jar, 'surface-texture')
    for (let time = 0; time < 3; time++) {
      await sitStill(page, MINUTE - 10_000)
      await scrolled(page, time % 2 === 0 ? 100 : 0)
    }
    await playOn(page, jar, 'day')
    for (const typed of ['1', '12', '1']) {
      await sitStill(page, MINUTE - 10_000)
      await page.locator('#measure-day').fill(typed)
    }
    expect(await warning(page).count()).toBe(0)
  })
})

describe('on the start screen', () => {
  const visit = useVisits()

  test('nothing runs out', async () => {
    const { page } = await visit({}, timed)
    await sitStill(page, 10 * MINUTE)
    expect(await page.locator('.start').count()).toBe(1)
    expect(await warning(page).count()).toBe(0)
  })

  test('version and content day are shown, and no review is overdue', async () => {
    const { page } = await visit({}, KIOSK)
    expect(await page.locator('.start-edition').textContent()).toMatch(
      /^Jarside \d+\.\d+\.\d+ · content of [A-Z][a-z]+ \d+, 20\d\d/
    )
    expect(await page.locator('.start .notice').count()).toBe(0)
  })

  test('content whose review is past is said to be overdue, in both languages', async () => {
    const later = (page: Page) => page.clock.install({ time: new Date('2036-01-01') })
    const { page } = await visit({}, { ...KIOSK, before: later })
    const notice = await page.locator('.start .notice').textContent()
    expect(notice).toContain('Review was due on')
    expect(notice).toContain('La revisión debía hacerse')
  })

  test('a kiosk that reached no server for 31 days says that it may be outdated, in both languages', async () => {
    const long = (page: Page) =>
      page.addInitScript(() => {
        const day = new Date(Date.now() - 32 * 86_400_000).toISOString().slice(0, 10)
        const key = 'jarside-kiosk-settings'
        if (localStorage.getItem(key) === null) {
          localStorage.setItem(key, JSON.stringify({ reachedOn: day }))
        }
        // No worker: nothing is reached.
        Reflect.deleteProperty(Navigator.prototype, 'serviceWorker')
      })
    const { page } = await visit({ viewport: LYING }, { ...KIOSK, before: long })
    const notice = await page.locator('.start .notice').textContent()
    expect(notice).toContain('more than 30 days')
    expect(notice).toContain('más de 30 días')
    await touchLanguage(page, 'es')
    await play(page, jar)
    expect(await page.locator('.screen .notice', { hasText: 'más de 30 días' }).count()).toBe(1)
  })

  test('an address cannot bring answers along', async () => {
    const { page } = await visit({}, { hash: 'kiosk#/es/kombucha-jar/likely-mold' })
    await page.locator('.start').waitFor()
    expect(new URL(page.url()).hash).toBe('')
  })
})
