import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { JARS } from '../helpers/jars.mjs'
import { atDesk, factsOn, say } from './desk-call.ts'
import { KIOSK, touchLanguage, UPRIGHT } from './kiosk.ts'
import { begin, openList, play } from './play.ts'
import { useVisits } from './visit.ts'

const visit = useVisits()

const understood = (page: Page) => page.locator('.emergency-understood').textContent()
const sign = (page: Page) => page.locator('[data-sign="severe-symptoms"]')
const marked = (page: Page) => page.locator('[data-sign]:checked').count()

describe('an emergency says what was understood, and one key takes it back', () => {
  test('on the page, with what else was told of the screen', async () => {
    const { page } = await visit()
    await play(page, JARS.emergency ?? {})
    expect(await understood(page)).toMatch(/^You said: .*breath/)
    await page.locator('.emergency .step-heading:focus').waitFor()
    await page.keyboard.press('Backspace')
    await page.locator('.question[data-observation="people-signs"]').waitFor()
    expect(await marked(page)).toBe(0)
    await page.locator('.question [data-answer="none"]').click()
    await page.locator('.question[data-observation="container-signs"]').waitFor()
  })

  test('on the kiosk, by its one button too', async () => {
    const { page } = await visit({ viewport: UPRIGHT }, KIOSK)
    await touchLanguage(page)
    await begin(page)
    await openList(page)
    await sign(page).check()
    await page.locator('.question [data-answer="none"]').click()
    expect(await understood(page)).toMatch(/^You said: .*breath/)
    await page.locator('[data-action="take-back"]').click()
    await page.locator('.question[data-observation="people-signs"]').waitFor()
    expect(await marked(page)).toBe(0)
  })

  test('at the desk, where it was typed: the fact is gone and the rest of the line stays', async () => {
    const { page } = await visit({}, { hash: 'desk.html' })
    await atDesk(page)
    await say(page, 'day 9, cannot breathe')
    expect(await understood(page)).toMatch(/^You said: .*breath/)
    await page.locator('.emergency .step-heading:focus').waitFor()
    // Escape is pressed out of habit after a line was sent: it takes nothing back.
    await page.keyboard.press('Escape')
    expect(await page.locator('.emergency').count()).toBe(1)
    await page.keyboard.press('Backspace')
    await atDesk(page)
    expect(await factsOn(page)).toEqual(['Day: 9 days'])
    expect(await marked(page)).toBe(0)
  })
})
