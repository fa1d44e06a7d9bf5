import { describe, expect, test } from 'vitest'
import { answer } from './play.ts'
import { useVisits } from './visit.ts'

const visit = useVisits()

describe('a jar that was shut too long', () => {
  test('is not tilted or opened to answer: the rest is asked from memory', async () => {
    const { page } = await visit({}, { hash: '#/kombucha-jar' })
    await page.locator('[data-observation="people-signs"] [data-answer="none"]').click()
    const lid = page.locator('.question[data-observation="container-signs"]')
    const how = page.locator('.question-how')
    await lid.waitFor()
    expect(await how.first().textContent()).not.toContain('Do not lift, tilt or open it')
    await answer(page, 'container-signs', ['closed-too-long'])
    await page.locator('.question[data-observation="jar-signs"]').waitFor()
    expect(await page.locator('.step-heading').textContent()).toContain('From memory')
    expect(await how.textContent()).toContain('Do not lift, tilt or open it to look.')
  })
})
