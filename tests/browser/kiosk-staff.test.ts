import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { JARS } from '../helpers/jars.mjs'
import { axeFaults } from './axe.ts'
import { KIOSK, keptBy, LYING, SMALL, smallForFingers, touchLanguage, UPRIGHT } from './kiosk.ts'
import { cutOff, spilling } from './layout.ts'
import { begin, play } from './play.ts'
import { useVisits } from './visit.ts'

const PIN = '2468'
const MINUTE = 60_000
/** What staff take off so that English alone is left, Spanish first. */
const OTHER_TAGS = ['es', 'vi', 'ar', 'zh']
const timed = { ...KIOSK, before: (page: Page) => page.clock.install() }

/** Opens the menu by the keyboard, which need not hold the button. */
async function askForMenu(page: Page): Promise<void> {
  await page.locator('.start-staff').focus()
  await page.keyboard.press('Enter')
  await page.locator('.pin').waitFor()
}

/** Types a PIN and enters it as a finger does. */
async function enterPin(page: Page, pin: string): Promise<void> {
  for (const digit of pin) await page.locator('.pin-key', { hasText: digit }).click()
  await page.locator('.pin-enter').click()
}

/** Opens the menu of a kiosk that nobody set up yet. */
async function setUp(page: Page): Promise<void> {
  await askForMenu(page)
  await enterPin(page, PIN)
  await page.locator('.pin h1', { hasText: 'again' }).waitFor()
  await enterPin(page, PIN)
  await page.locator('.staff').waitFor()
}

const leave = async (page: Page) => {
  await page.locator('[data-move="back"]').click()
  await page.locator('.start').waitFor()
}

const stored = (page: Page): Promise<Record<string, string>> =>
  page.evaluate(() => ({ ...localStorage }))

/** Holds a finger on a button for so long. */
async function hold(page: Page, selector: string, milliseconds: number): Promise<void> {
  const box = await page.locator(selector).boundingBox()
  await page.mouse.move((box?.x ?? 0) + 20, (box?.y ?? 0) + (box?.height ?? 0) / 2)
  await page.mouse.down()
  await page.clock.runFor(milliseconds)
  await page.mouse.up()
}

describe('the staff menu', () => {
  const visit = useVisits()

  test('opens to a finger that stays for three seconds, and to no tap', async () => {
    const { page } = await visit({ viewport: LYING }, timed)
    await page.locator('.start-staff').click()
    await hold(page, '.start-staff', 2_500)
    expect(await page.locator('.start').count()).toBe(1)
    await hold(page, '.start-staff', 3_100)
    await page.locator('.pin').waitFor()
  })

  test('keeps out whoever has another PIN, and after five tries everybody for a minute', async () => {
    const { page } = await visit({ viewport: LYING }, timed)
    await setUp(page)
    await leave(page)
    await askForMenu(page)
    for (const [tries, pin] of ['1111', '2222', '3333', '4444', '5555', PIN].entries()) {
      await enterPin(page, pin)
      await page.locator('.pin-trouble', { hasText: tries < 4 ? 'Wrong' : 'minute' }).waitFor()
      await page.locator('.pin-dot-full').first().waitFor({ state: 'detached' })
    }
    expect(await page.locator('.staff').count()).toBe(0)
    await page.clock.runFor(MINUTE)
    await enterPin(page, PIN)
    await page.locator('.staff').waitFor()
  })

  test('keeps of the PIN a hash alone, and with settings and counts nothing of a visitor', async () => {
    const { page } = await visit({ viewport: LYING }, KIOSK)
    // The server was reached on a day, which is all that is kept of it.
    await page.waitForFunction(() =>
      /"reachedOn":"/.test(localStorage.getItem('jarside-kiosk-settings') ?? '')
    )
    await setUp(page)
    await page.locator('[data-value="largest"]').click()
    await page.locator('[data-value="wild-sodas"]').click()
    await leave(page)
    await touchLanguage(page, 'es')
    await play(page, JARS['somebody-ill'] ?? {})
    await page.locator('[data-action="done"]').click()
    await page.locator('.start').waitFor()
    const { 'jarside-kiosk-settings': settings = '{}', ...others } = await stored(page)
    expect(Object.keys(others)).toEqual(['jarside-kiosk-counts'])
    expect(settings).not.toContain(PIN)
    expect(JSON.parse(settings)).toEqual({
      pin: expect.stringMatching(/^\d+\.[0-9a-f]{32}\.[0-9a-f]{64}$/),
      withoutTrees: ['wild-sodas'],
      withoutLanguages: [],
      idleSeconds: 60,
      text: 'largest',
      contrast: 'ordinary',
      inches: null,
      reachedOn: expect.stringMatching(/^\d{4}-\d{2}-\d{2}$/)
    })
    const { local, session, cookies, databases, cached } = await keptBy(page)
    expect({ local, session, cookies, databases, cached }).toEqual({
      local: ['jarside-kiosk-settings'],
      session: 0,
      cookies: '',
      databases: [],
      cached: []
    })
    // What staff settled outlives the visitor, and the page.
    await page.reload()
    expect(await page.locator('html').getAttribute('data-text')).toBe('largest')
    await touchLanguage(page)
    expect(await page.locator('[data-tree="wild-sodas"]').count()).toBe(0)
    expect(await page.locator('[data-tree]').count()).toBeGreaterThan(3)
  })

  test('takes languages off, sets the idle time, and never takes off the last ferment', async () => {
    const { page } = await visit({ viewport: LYING }, timed)
    await setUp(page)
    for (const tag of OTHER_TAGS) await page.locator(`.staff [data-value="${tag}"]`).click()
    await page.locator('[data-value="120"]').click()
    const ferments = page.locator('.staff-offers').first().locator('button')
    for (const ferment of await ferments.all()) await ferment.click()
    const on = page.locator('.staff-offers').first().locator('[aria-pressed="true"]')
    expect(await on.count()).toBe(1)
    await leave(page)
    expect(await page.locator('.start [data-language]').count()).toBe(1)
    await touchLanguage(page)
    expect(await page.locator('[data-tree]').count()).toBe(1)
    await page.locator('[data-tree]').click()
    await page.locator('.question').waitFor()
    await page.clock.runFor(MINUTE + 30_000)
    expect(await page.locator('dialog[open]').count()).toBe(0)
    await page.clock.runFor(MINUTE)
    await page.locator('dialog[open]').waitFor()
  })

  test('locks the screen for a cloth: no touch does anything until the circle is held', async () => {
    const { page } = await visit({ viewport: LYING, hasTouch: true }, timed)
    await setUp(page)
    await page.locator('[data-action="clean"]').click()
    await page.locator('.cleaning').waitFor()
    expect(await axeFaults(page, 'kiosk')).toEqual([])
    for (let x = 60; x < LYING.width; x += 310) {
      for (let y = 60; y < LYING.height; y += 240) await page.touchscreen.tap(x, y)
    }
    await page.clock.runFor(10 * MINUTE)
    expect(await page.locator('.cleaning').count()).toBe(1)
    expect(await page.locator('.cleaning .foot-numbers li').count()).toBe(2)
    await hold(page, '.cleaning-hold', 3_100)
    await page.locator('.start').waitFor()
  })

  test('closes by itself when nobody touches it', async () => {
    const { page } = await visit({ viewport: LYING }, timed)
    await setUp(page)
    await page.clock.runFor(2 * MINUTE + 1_000)
    await page.locator('.start').waitFor()
  })

  test('counts the day and says how this copy stands', async () => {
    const { page } = await visit({ viewport: LYING }, KIOSK)
    await touchLanguage(page, 'es')
    await begin(page)
    await page.locator('[data-move="start-over"]').click()
    await touchLanguage(page)
    await play(page, JARS['green-fuzz'] ?? {})
    await page.locator('[data-action="done"]').click()
    await setUp(page)
    const day = await page
      .locator('.staff-day dl > div')
      .evaluateAll(all => all.map(one => one.textContent))
    expect(day.slice(0, 5)).toEqual([
      ...['Outcomes1', 'Of these, referred0', 'Left early1', 'English1', 'Español1']
    ])
    expect(day.slice(5).map(line => line?.at(-1))).toEqual(OTHER_TAGS.slice(1).map(() => '0'))
    for (const check of ['kept', 'whole', 'writes']) {
      await page.locator(`[data-check="${check}"][data-holds="true"]`).waitFor()
    }
    await page.locator('[data-action="update"]').click()
    await page.locator('.staff-looked', { hasText: 'newest' }).waitFor()
    expect(await page.locator('#page [href]').count()).toBe(0)
  })
})

describe.each([
  ['upright', UPRIGHT],
  ['lying', LYING],
  ['small', SMALL]
])('the staff menu %s', (manner, viewport) => {
  const visit = useVisits()

  test.each(['en', 'es'])('fits in %s, with large targets, and axe faults nothing', async tag => {
    const { page } = await visit({ viewport }, KIOSK)
    const faults: string[] = []
    const look = async () => {
      faults.push(...(await axeFaults(page, `staff ${manner}`)))
      faults.push(...(await smallForFingers(page)))
      faults.push(...(await spilling(page)), ...(await cutOff(page)))
    }
    await askForMenu(page)
    if (tag !== 'en') await page.locator(`.masthead [data-language="${tag}"]`).click()
    await page.locator(`html[lang="${tag}"]`).waitFor({ state: 'attached' })
    await look()
    await enterPin(page, PIN)
    await page.locator('.pin-dot-full').first().waitFor({ state: 'detached' })
    await enterPin(page, PIN)
    await page.locator('.staff').waitFor()
    await look()
    // As large as a hand needs on a tablet of ten inches.
    await page.locator('[data-value="10"]').click()
    await look()
    expect(faults).toEqual([])
  })
})
