import { describe, expect, test } from 'vitest'
import { axeFaults } from './axe.ts'
import { atDesk, factsOn, say } from './desk-call.ts'
import { useVisits } from './visit.ts'

const visit = useVisits()
const DESK = { hash: 'desk.html' }

describe('a how-to question at the desk', () => {
  test('is answered beside the facts in both languages, and tells nothing', async () => {
    const { page } = await visit({ viewport: { width: 1280, height: 800 } }, DESK)
    await atDesk(page)
    await page.locator('.desk-language', { hasText: 'Español' }).click()
    await atDesk(page)
    await say(page, 'how warm should the kombucha be')
    const answer = page.locator('[data-know-how="how-warm-kombucha"] .know-how-answer')
    await answer.waitFor()
    expect(await answer.locator('.first').textContent()).toContain('75 to 85 °F')
    expect(await answer.locator('.second').textContent()).toContain('De 75 a 85 °F')
    expect(await factsOn(page)).toEqual([])
    expect(await axeFaults(page)).toEqual([])
    await page.locator('.desk-asked-head button').click()
    expect(await page.locator('.desk-asked').count()).toBe(0)
  })

  test('about this jar gets no answer: the sheet gives it', async () => {
    const { page } = await visit({}, DESK)
    await atDesk(page)
    await say(page, 'how much salt for sauerkraut')
    await page.locator('[data-know-how]').waitFor()
    await say(page, 'can I still drink this')
    await page.locator('.desk-asked').waitFor({ state: 'detached' })
    expect(await factsOn(page)).toEqual([])
  })
})
