import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { JARS } from '../helpers/jars.mjs'
import { answer, askedOn, begin, playOn, verdictsOn } from './play.ts'
import { useVisits } from './visit.ts'

const MOST_TABS = 60

/** Presses Tab, or Shift and Tab, until the focus stands on the element; fails when it never gets there. */
async function tabTo(page: Page, selector: string, key = 'Tab'): Promise<void> {
  for (let tabs = 0; tabs < MOST_TABS; tabs++) {
    await page.keyboard.press(key)
    if (await page.evaluate(one => document.activeElement?.matches(one), selector)) return
  }
  throw new Error(`Tab never comes to ${selector}`)
}

/** Whether a frame is drawn around what has the focus: around the pill, where a radio stands in one. */
const focusIsSeen = (page: Page) =>
  page.evaluate(() => {
    const focused = document.activeElement
    return [focused, focused?.closest('.pill')].some(element => {
      if (!element) return false
      const { outlineStyle, outlineWidth } = getComputedStyle(element)
      return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2
    })
  })

const arrived = (page: Page, observation: string) =>
  page.locator(`.question[data-observation="${observation}"] h1:focus`).waitFor()

describe('a jar walked with the keyboard alone', () => {
  const visit = useVisits()

  test('reaches its outcome with Tab, Space and Enter', async () => {
    const { page } = await visit()
    const press = async (selector: string, key: 'Enter' | 'Space') => {
      await tabTo(page, selector)
      await page.keyboard.press(key)
    }

    await press('[data-tree="kombucha-jar"]', 'Enter')
    await arrived(page, 'people-signs')
    await press('[data-answer="none"]', 'Enter')
    await arrived(page, 'container-signs')
    // One answer to the lid's signs and the jar's.
    await press('[data-answer="none"]', 'Space')
    await arrived(page, 'surface-texture')
    await press('[data-answer="wet-film"]', 'Space')
    await arrived(page, 'spots-and-color')
    await press('[data-answer="plain-color"]', 'Enter')
    await arrived(page, 'smell-and-liquid')
    await press('[data-answer="none"]', 'Enter')
    await arrived(page, 'day')
    await tabTo(page, '#measure-day')
    await page.keyboard.type('9')
    await page.keyboard.press('Enter')
    await arrived(page, 'jar-ph')
    await tabTo(page, '#measure-jar-ph')
    await page.keyboard.type('3.2')
    await press('[type="submit"]', 'Space')
    await arrived(page, 'drinkers')
    await press('[data-sign="someone-drank"]', 'Space')
    await press('[data-answer="none"]', 'Enter')

    await page.locator('.outcome h1:focus').waitFor()
    expect(await verdictsOn(page)).toEqual(['normal-growth'])
  })

  test('arrow keys move about but never give an answer', async () => {
    const { page } = await visit()
    await begin(page)
    for (const observation of ['surface-texture', 'jar-ph']) {
      await playOn(page, JARS['merging-islands'] ?? {}, observation)
      const beads = await page.locator('button.bead').count()
      await tabTo(page, '.card, .pill input')
      for (const key of ['ArrowDown', 'ArrowRight', 'ArrowUp', 'ArrowLeft', 'ArrowDown', 'End']) {
        await page.keyboard.press(key)
      }

      expect(await askedOn(page)).toBe(observation)
      expect(await page.locator('button.bead').count()).toBe(beads)
    }
  })

  test.each(['people-signs', 'surface-texture', 'jar-ph'])(
    'everything that Tab stops at on %s is seen to have the focus',
    async observation => {
      const { page } = await visit()
      await begin(page)
      await playOn(page, JARS['merging-islands'] ?? {}, observation)
      const unseen: string[] = []
      const stops = new Set<string>()
      for (let tabs = 0; tabs < MOST_TABS; tabs++) {
        await page.keyboard.press('Tab')
        const stop = await page.evaluate(
          () => document.activeElement?.outerHTML.slice(0, 120) ?? ''
        )
        if (stop.startsWith('<body')) break
        stops.add(stop)
        // A busy machine may paint the outline a frame later.
        if (!(await focusIsSeen(page)) && !(await afterFrames(page, focusIsSeen))) unseen.push(stop)
      }
      expect(unseen).toEqual([])
      expect(stops.size).toBeGreaterThan(5)
    }
  )

  test('going back puts the focus on the heading again', async () => {
    const { page } = await visit()
    await begin(page)
    await answer(page, 'people-signs', 'none')
    await arrived(page, 'container-signs')
    await tabTo(page, '.string .bead')
    // Back stands before the walk so far.
    await tabTo(page, '[data-move="back"]', 'Shift+Tab')
    await page.keyboard.press('Enter')

    await arrived(page, 'people-signs')
  })
})

async function afterFrames(page: Page, look: (page: Page) => Promise<boolean>): Promise<boolean> {
  await page.evaluate(
    () => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)))
  )
  return look(page)
}
