import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { JARS } from '../helpers/jars.mjs'
import { axeFaults } from './axe.ts'
import { KIOSK, LYING, smallForFingers, touchLanguage, UPRIGHT, verdictsShown } from './kiosk.ts'
import { cutOff, spilling } from './layout.ts'
import { begin, play, playOn } from './play.ts'
import { speechDouble, spokenAloud } from './speech-double.ts'
import { useVisits } from './visit.ts'

const DOUBLE = 'html.kiosk { font-size: 337.5% !important }'

/** What is wider than the page or than what scrolls in it. */
const faultsOf = async (page: Page) => [
  ...(await spilling(page)),
  ...(await cutOff(page)),
  ...(await page
    .locator('.main, .screen')
    .evaluateAll(all =>
      all
        .filter(one => one.scrollWidth > one.clientWidth)
        .map(one => `${one.className} scrolls sideways to ${one.scrollWidth}`)
    ))
]

/** Whether the bar's first button and all of the numbers are in sight without scrolling. */
const barAndNumbers = (page: Page) =>
  page.locator('[data-move="back"], .foot-numbers').evaluateAll(all =>
    all.map(one => {
      const { top, bottom } = one.getBoundingClientRect()
      return top >= 0 && bottom <= innerHeight
    })
  )

describe.each([
  ['upright', UPRIGHT],
  ['lying', LYING]
])('the kiosk %s', (manner, viewport) => {
  const visit = useVisits()

  test('fits in Spanish, bar and numbers in sight, targets large, and axe faults nothing', async () => {
    const { page } = await visit({ viewport }, KIOSK)
    const faults: string[] = []
    const look = async (screen: string) => {
      const found = [
        ...(await axeFaults(page, `kiosk ${manner}`)),
        ...(await faultsOf(page)),
        ...(await smallForFingers(page))
      ]
      faults.push(...found.map(fault => `${screen}: ${fault}`))
    }
    await look('start')
    for (const name of ['green-fuzz', 'day-nine-by-strip', 'somebody-ill']) {
      await touchLanguage(page, 'es')
      await look('choose')
      await play(page, JARS[name] ?? {}, async screen => {
        await look(screen ?? name)
        await page.locator('.main').evaluate(main => main.scrollTo(0, main.scrollHeight))
        expect(await barAndNumbers(page), `${screen}`).toEqual([true, true])
      })
      await page.locator('[data-action="done"]').click()
    }
    expect(faults).toEqual([])
  })

  test('shows an emergency whole, both numbers in sight, in both languages at once', async () => {
    const { page } = await visit({ viewport }, KIOSK)
    await touchLanguage(page, 'es')
    await play(page, JARS.emergency ?? {})
    const bottoms = await page
      .locator('.emergency h1, .emergency .phone, .emergency .quiet')
      .evaluateAll(all => all.map(one => one.getBoundingClientRect().bottom))
    // Heading, two numbers, the way back and the way to begin anew.
    expect(bottoms.length).toBe(5)
    expect(Math.max(...bottoms)).toBeLessThanOrEqual(viewport.height)
  })

  test('fits with its text at twice its size', async () => {
    const { page } = await visit({ viewport, bypassCSP: true }, KIOSK)
    await page.addStyleTag({ content: DOUBLE })
    const faults: string[] = []
    const look = async (screen: string | null) =>
      faults.push(...(await faultsOf(page)).map(fault => `${screen}: ${fault}`))
    await look('start')
    await touchLanguage(page, 'es')
    await look('choose')
    await play(page, JARS['day-nine-by-strip'] ?? {}, look)
    await page.locator('[data-action="done"]').click()
    await touchLanguage(page)
    await play(page, JARS.emergency ?? {}, look)
    expect(faults).toEqual([])
  })
})

/** The buttons that go on from a screen, and the aids, as far as they are out of sight. */
const outOfSight = (page: Page) =>
  page
    .locator(
      '.aid, .masthead [data-move], .card-unsure, .sweep-answers button, .measure > .actions button, ' +
        '.signs > .actions button, .take-home-jump, .emergency .phone, .emergency .quiet'
    )
    .evaluateAll(all =>
      all.flatMap(one => {
        const { top, bottom, left, right } = one.getBoundingClientRect()
        const seen = top >= 0 && bottom <= innerHeight && left >= 0 && right <= innerWidth
        return seen ? [] : [`${one.className} ${one.textContent} ends at ${bottom}`]
      })
    )

describe.each([
  ['upright', UPRIGHT],
  ['lying', LYING],
  ['on a tablet', { width: 820, height: 1180 }]
])('the kiosk with larger text, %s', (manner, viewport) => {
  const visit = useVisits()

  test('keeps the ways on and its aids in sight, large enough, and is as before for the next', async () => {
    const { page } = await visit({ viewport }, { ...KIOSK, before: speechDouble })
    const faults: string[] = []
    const look = async (screen: string | null) => {
      const found = [
        ...(await outOfSight(page)),
        ...(await smallForFingers(page)),
        ...(await faultsOf(page))
      ]
      faults.push(...found.map(fault => `${screen}: ${fault}`))
    }
    const html = page.locator('html')
    for (const name of ['day-nine-by-strip', 'emergency']) {
      await touchLanguage(page, 'es')
      await page.locator('[data-aid="large"]').click()
      await page.locator('[data-aid="strong"]').click()
      await look('choose')
      await play(page, JARS[name] ?? {}, look)
      await look(name)
      expect(await axeFaults(page, `kiosk ${manner}`)).toEqual([])
      expect(await html.getAttribute('data-text')).toBe('largest')
      expect(await html.getAttribute('data-contrast')).toBe('high')
      await page.locator('[data-move="start-over"]').click()
      await page.locator('.start').waitFor()
      expect(await html.getAttribute('data-text')).toBe('normal')
      expect(await html.getAttribute('data-contrast')).toBe('ordinary')
    }
    expect(faults).toEqual([])
  })
})

describe('a visitor to the kiosk', () => {
  const visit = useVisits()

  test('changes the language in the middle: the answers stay', async () => {
    const { page } = await visit({ viewport: LYING }, KIOSK)
    await touchLanguage(page)
    await begin(page)
    await playOn(page, JARS['new-film'] ?? {}, 'day')
    await page.locator('#measure-day').fill('4')
    await page.locator('.masthead [data-language="es"]').click()
    await page.locator('html[lang="es"]').waitFor()
    expect(await page.locator('#measure-day').inputValue()).toBe('4')
    expect(await page.locator('button.bead').count()).toBe(6)
  })

  test('has each screen read in its language, until another one is shown', async () => {
    const { page } = await visit({ viewport: LYING }, { ...KIOSK, before: speechDouble })
    await touchLanguage(page, 'es')
    await begin(page)
    const read = page.locator('[data-aid="read"]')
    await read.click()
    await page.evaluate(() => window.dispatchEvent(new Event('sentence-said')))
    const first = (await page.locator('.question h1').textContent()) ?? ''
    expect(first.startsWith((await spokenAloud(page))[0] ?? '-')).toBe(true)
    expect((await spokenAloud(page)).length).toBe(2)
    await page.locator('[data-answer="none"]').click()
    await page.locator('[data-aid="read"][data-state="silent"]').waitFor()
    expect((await spokenAloud(page)).at(-1)).toBe('hush')

    await read.click()
    await page.locator('[data-aid="read"][data-state="speaking"]').waitFor()
    await page.locator('.masthead [data-language="en"]').click()
    await page.locator('[data-aid="read"][data-state="silent"]').waitFor()
    // No voice of this device reads Vietnamese without a network.
    await page.locator('.masthead [data-language="vi"]').click()
    await page.locator('html[lang="vi"]').waitFor()
    expect(await read.count()).toBe(0)
    expect(await page.locator('[data-aid="large"]').count()).toBe(1)
  })

  test('cannot zoom the page for the next one with two fingers, and scrolls with one', async () => {
    const touch = { viewport: { width: 820, height: 1180 }, hasTouch: true, isMobile: true }
    const { page, context } = await visit(touch, KIOSK)
    await touchLanguage(page)
    await begin(page)
    await playOn(page, JARS['new-film'] ?? {}, 'surface-texture')
    const client = await context.newCDPSession(page)
    const touched = async (...moves: readonly (readonly { x: number; y: number }[])[]) => {
      for (const [index, fingers] of [...moves, []].entries()) {
        const type = fingers.length === 0 ? 'touchEnd' : index === 0 ? 'touchStart' : 'touchMove'
        const touchPoints = fingers.map((point, id) => ({ ...point, id }))
        await client.send('Input.dispatchTouchEvent', { type, touchPoints })
      }
    }
    // A page is zoomed in the frame after.
    const scale = () =>
      page.evaluate(
        () =>
          new Promise(drawn =>
            requestAnimationFrame(() =>
              requestAnimationFrame(() => drawn(window.visualViewport?.scale))
            )
          )
      )
    const steps = Array.from({ length: 15 }, (_, step) => 10 + 12 * step)
    const apart = (by: number) => [400 - by, 400 + by].map(x => ({ x, y: 600 }))
    const scrolled = page
      .locator('.main')
      .evaluate(
        main =>
          new Promise(heard => main.addEventListener('scroll', () => heard(true), { once: true }))
      )
    await touched(...steps.map(apart))
    expect(await scale()).toBe(1)
    await touched(...steps.map(by => [{ x: 400, y: 700 - by }]))
    expect(await scrolled).toBe(true)
    expect(await scale()).toBe(1)
  })

  test('gets through with Tab and Enter alone', async () => {
    const { page } = await visit({ viewport: LYING }, KIOSK)
    const press = async (selector: string) => {
      for (let tabs = 0; tabs < 60; tabs++) {
        await page.keyboard.press('Tab')
        if (await page.evaluate(one => document.activeElement?.matches(one), selector)) {
          return page.keyboard.press('Enter')
        }
      }
      throw new Error(`Tab never comes to ${selector}`)
    }
    const steps = {
      'people-signs': 'none',
      'container-signs': 'none',
      'surface-texture': 'dry-fuzzy',
      drinkers: 'none'
    }
    await press('.start [data-language="en"]')
    await press('[data-tree]')
    for (const [observation, answer] of Object.entries(steps)) {
      await page.locator(`[data-observation="${observation}"] h1:focus`).waitFor()
      await press(`[data-answer="${answer}"]`)
    }
    await page.locator('.outcome h1:focus').waitFor()
    expect(await verdictsShown(page)).toEqual(['likely-mold'])
    await press('[data-action="done"]')
    expect(await page.locator('.start').count()).toBe(1)
  })

  test('who asked for less motion sees a jar that stands still', async () => {
    const moving = (page: Page) => page.evaluate(() => document.getAnimations().length)
    const { page } = await visit({ reducedMotion: 'reduce' }, KIOSK)
    expect(await moving(page)).toBe(0)
    await page.emulateMedia({ reducedMotion: 'no-preference' })
    expect(await moving(page)).toBeGreaterThan(0)
  })
})
