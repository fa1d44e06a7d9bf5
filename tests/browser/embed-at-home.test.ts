import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { JARS } from '../helpers/jars.mjs'
import { axeFaults } from './axe.ts'
import { spillingInside, useEmbeds } from './embed-visit.ts'
import { answer, playOn, verdictsOn } from './play.ts'

const fuzz = JARS['white-fuzz'] ?? {}
const question = (page: Page) => page.locator('.question').first()
/** A page's own paragraph and button, and how the element itself is boxed, as the browser draws them. */
const theirLook = (page: Page) =>
  page.evaluate(() =>
    ['#theirs', '#press', 'h1', 'body', 'html'].map(one => {
      const style = getComputedStyle(document.querySelector(one) as Element)
      return [...style].map(name => `${name}: ${style.getPropertyValue(name)}`).join('; ')
    })
  )

describe('a page that holds the embed', () => {
  const open = useEmbeds()

  test('keeps its look, title, address, focus, place, names and stores', async () => {
    const state = (page: Page) =>
      page.evaluate(() => ({
        title: document.title,
        address: location.href,
        history: history.length,
        names: Object.keys(window).filter(name => !name.startsWith('__playwright')),
        focus: document.activeElement?.tagName,
        scroll: scrollY,
        cookies: document.cookie,
        stores: localStorage.length + sessionStorage.length
      }))
    const without = await open('/county', { before: page => page.route('**/*.js', r => r.abort()) })
    without.faults.length = 0
    const before = { ...(await state(without.page)), address: '' }
    const look = await theirLook(without.page)
    without.faults.length = 0

    const { page } = await open('/county', { viewport: { width: 700, height: 120 } })
    await question(page).waitFor()
    await page.waitForLoadState('networkidle')
    expect({ ...(await state(page)), address: '' }).toEqual(before)
    await page.setViewportSize({ width: 700, height: 800 })
    const { page: untouched } = await open('/county')
    await question(untouched).waitFor()
    const sized = /^--|(?:width|height|size|origin|inset|block|inline|bottom|top|left|right)/
    const kept = (looks: readonly string[]) =>
      looks.map(one => one.split('; ').filter(part => !sized.test(part.split(':')[0] ?? '')))
    expect(kept(await theirLook(untouched))).toEqual(kept(look))

    await playOn(page, fuzz)
    const after = await state(page)
    expect({ ...after, address: '', focus: '', scroll: 0 }).toEqual({
      ...before,
      focus: '',
      scroll: 0
    })
  })

  test('hears of no answer: no press and no letter comes out', async () => {
    const { page } = await open('/county')
    await question(page).waitFor()
    await page.evaluate(() => {
      Object.assign(window, { heard: [] })
      for (const name of ['click', 'input', 'change', 'submit']) {
        document.addEventListener(name, () =>
          (window as never as { heard: string[] }).heard.push(name)
        )
      }
    })
    await playOn(page, JARS['new-film'] ?? {})
    expect(await page.evaluate('heard')).toEqual([])
    await page.locator('#press').click()
    expect(await page.evaluate('heard')).toEqual(['click'])
  })

  test.each([
    ['/county', 320],
    ['/dark', 320],
    ['/spanish', 700]
  ])('at %s, %i pixels wide, axe faults nothing and nothing spills', async (at, width) => {
    const { page } = await open(at, { viewport: { width, height: 800 } })
    await question(page).waitFor()
    const faults: string[] = []
    const look = async (screen: string | null) => {
      const heading = page.locator('h1:focus')
      if (screen !== 'people-signs') await heading.waitFor()
      faults.push(...(await axeFaults(page, `${at} ${screen}`)), ...(await spillingInside(page)))
    }
    await playOn(page, { ...JARS['new-film'] }, 'spots-and-color', look)
    await page.locator('button.bead').nth(3).click()
    await page.locator('[data-observation="surface-texture"] h1:focus').waitFor()
    await answer(page, 'surface-texture', 'dry-fuzzy')
    await page.locator('[data-observation="drinkers"]').waitFor()
    await answer(page, 'drinkers', 'none')
    await page.locator('.outcome').waitFor()
    await look(null)
    await page.locator('button.bead').first().click()
    await page.locator('[data-sign="severe-symptoms"]').check()
    await page.locator('[data-answer="none"]').click()
    await look('emergency')
    expect(faults).toEqual([])
  })

  test('is walked with the keyboard alone, heading by heading', async () => {
    const { page } = await open('/county')
    await question(page).waitFor()
    const inside = () =>
      page.evaluate(() => document.activeElement?.shadowRoot?.activeElement?.outerHTML ?? '')
    const press = async (part: string, key: 'Enter' | 'Space') => {
      for (let tabs = 0; !(await inside()).includes(part); tabs++) {
        if (tabs > 60) throw new Error(`Tab never comes to ${part}`)
        await page.keyboard.press('Tab')
      }
      await page.keyboard.press(key)
    }
    const steps = ['people-signs', 'container-signs']
    for (const [at] of steps.entries()) {
      await press('data-answer="none"', at === 1 ? 'Space' : 'Enter')
      const next = steps[at + 1] ?? 'surface-texture'
      await page.locator(`[data-observation="${next}"] h1:focus`).waitFor()
    }
    await press('data-answer="dry-fuzzy"', 'Enter')
    await page.locator('[data-observation="drinkers"] h1:focus').waitFor()
    await press('data-answer="none"', 'Enter')
    await page.locator('.outcome h1:focus').waitFor()
    expect(await verdictsOn(page)).toEqual(['likely-mold'])
  })
})

describe('text at twice its size', () => {
  const open = useEmbeds('--blink-settings=defaultFontSize=32')

  test.each([320, 700])('fits at %i pixels wide', async width => {
    const { page } = await open('/spanish', { viewport: { width, height: 800 } })
    await question(page).waitFor()
    expect(
      await page.locator('.question-how').evaluate(one => getComputedStyle(one).fontSize)
    ).toBe('37.8px')
    const faults: string[] = []
    const look = async () => faults.push(...(await spillingInside(page)))
    await playOn(page, fuzz, null, look)
    await page.locator('button.bead').first().click()
    await page.locator('[data-sign="severe-symptoms"]').check()
    await page.locator('[data-answer="none"]').click()
    await page.locator('.emergency').waitFor()
    await look()
    expect(faults).toEqual([])
  })
})
