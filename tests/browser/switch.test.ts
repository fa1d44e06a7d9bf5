import { describe, expect, test } from 'vitest'
import { useVisits } from './visit.ts'

const visit = useVisits()

describe('another ferment is chosen', () => {
  test('on the page, and what was told of people stays told', async () => {
    const { page } = await visit({}, { hash: '#/kombucha-jar' })
    await page.locator('[data-observation="people-signs"] [data-answer="none"]').click()
    await page.locator('.question[data-observation="container-signs"]').waitFor()
    await page.locator('.foot-more > summary').click()
    await page.locator('[data-move="switch"]').click()
    await page.locator('[data-tree="kombucha-bottle"]').click()
    await page.locator('.question[data-observation="bottle-signs"]').waitFor()
    expect(await page.locator('button.bead[data-observation="people-signs"]').count()).toBe(1)
    expect(page.url()).not.toContain('people')
  })

  test('and starting over forgets it', async () => {
    const { page } = await visit({}, { hash: '#/kombucha-jar' })
    await page.locator('[data-observation="people-signs"] [data-answer="none"]').click()
    await page.locator('.question[data-observation="container-signs"]').waitFor()
    await page.locator('[data-move="start-over"]').click()
    await page.locator('[data-tree="kombucha-bottle"]').click()
    await page.locator('.question[data-observation="people-signs"]').waitFor()
  })
})

describe('in the middle of a call', () => {
  test('the facts that another tree asks about as well go along', async () => {
    const { page } = await visit({}, { hash: 'desk.html' })
    await page.locator('.question').waitFor()
    await page.locator('.fact-input').fill('hairy, she drank some')
    await page.locator('.fact-input').press('Enter')
    await page.locator('.fact[data-observation="drinkers"]').waitFor()
    await page.locator('.desk-tree').selectOption('kombucha-bottle')
    await page.locator('.fact[data-observation="drinkers"]').waitFor()
    expect(await page.locator('.fact[data-observation="surface-texture"]').count()).toBe(0)
    expect(await page.locator('.desk-tree').inputValue()).toBe('kombucha-bottle')
  })
})
