import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { axeFaults } from './axe.ts'
import { useVisits } from './visit.ts'

const visit = useVisits()
const at = (query: string) => ({ hash: `how-to.html#${query}` })
const PHONE = { viewport: { width: 390, height: 844 } }

async function ask(page: Page, line: string) {
  await page.locator('.ask-field input').fill(line)
  await page.locator('.ask-field input').press('Enter')
}

describe('the page of how-to answers', () => {
  test('answers a misspelled question, with its sources folded under it', async () => {
    const { page } = await visit({}, at(''))
    await ask(page, 'how much salt for saurkraut')
    const card = page.locator('[data-know-how="how-much-salt"]')
    await card.locator('summary').click()
    expect(await card.textContent()).toMatch(
      /3 tablespoons.+published guidance.+Draft.+2027-11-01/s
    )
    expect(await axeFaults(page)).toEqual([])
  })

  test('asked in Spanish on a phone it answers in Spanish, the English under it', async () => {
    const { page } = await visit(PHONE, at('lang=es'))
    await ask(page, 'cuanta sal yeva el chucrut')
    const answer = page.locator('[data-know-how="how-much-salt"] .know-how-answer')
    expect(await answer.locator('.first').textContent()).toContain('3 cucharadas')
    expect(await answer.locator('.second').textContent()).toContain('3 tablespoons')
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390)
    expect(await axeFaults(page)).toEqual([])
  })

  test('leads to the questions where one jar is judged, and answers nothing that allows it', async () => {
    const { page } = await visit({}, at(''))
    await ask(page, 'is my sauerkraut ok')
    const look = page.locator('[data-lead="look"] a')
    expect(await look.getAttribute('href')).toBe('./#/en/brined-vegetables')
    expect(await axeFaults(page)).toEqual([])
    await look.click()
    await page.locator('[data-question], .question').first().waitFor()
  })

  test('an emergency gets its number alone, and so the address holds no answer', async () => {
    const { page } = await visit(PHONE, at('answer=how-much-salt'))
    await page.locator('[data-know-how="how-much-salt"]').waitFor()
    await ask(page, 'my mom cannot swallow')
    const alarm = page.locator('[data-lead="emergency"]')
    expect(await alarm.locator('a').getAttribute('href')).toBe('tel:911')
    expect(await page.locator('[data-know-how]').count()).toBe(0)
    expect(page.url()).not.toContain('answer=')
    expect(await axeFaults(page)).toEqual([])
  })

  test('what is not answered here has the number of the office', async () => {
    const { page } = await visit({}, at(''))
    await ask(page, 'who won the football game')
    // The office's numbers may come after the answer.
    const answer = page.locator('[data-lead="not-here"]', { hasText: '555-01' })
    expect(await answer.textContent()).toMatch(/office.+555-01/s)
  })

  test('what is asked is in no request and in no address', async () => {
    const { page, requests } = await visit({}, at(''))
    await page.locator('.ask-field').waitFor()
    const before = requests.length
    await ask(page, 'kombucha while pregnant')
    await page.locator('[data-know-how="pregnant-kombucha"]').waitFor()
    // Type and the tab's drawing come when the browser likes.
    expect(requests.slice(before).filter(url => !/\.(?:woff2|svg)$/.test(url))).toEqual([])
    expect(decodeURIComponent(page.url())).not.toMatch(/while|pregnant\s/)
  })

  test('every ferment lists its questions, and each opens its answer', async () => {
    const { page } = await visit({}, at(''))
    const ferments = page.locator('[data-ferment]')
    const count = await ferments.count()
    expect(count).toBeGreaterThanOrEqual(9)
    let questions = 0
    for (let nth = 0; nth < count; nth++) {
      await ferments.nth(nth).click()
      questions += await page.locator('[data-answer]').count()
    }
    expect(questions).toBeGreaterThanOrEqual(80)
    await page.locator('[data-answer]').first().click()
    const id = await page.locator('[data-answer][aria-current]').getAttribute('data-answer')
    await page.locator(`[data-know-how="${id}"]`).waitFor()
    expect(await axeFaults(page)).toEqual([])
  })

  test('prints the answers of one ferment as a list for a class', async () => {
    const { page } = await visit({}, at('ferment=sourdough-starter'))
    await page.locator('.ask-field').waitFor()
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.how-to-page').isVisible()).toBe(false)
    const sheet = page.locator('.class-sheet')
    const text = await sheet.textContent()
    expect(text).toContain('Sourdough starter')
    expect(text).toContain('Draft')
    expect(text).toContain('1-800-222-1222')
    expect(await sheet.locator('.class-answer').count()).toBe(
      await page.locator('[data-answer]').count()
    )
    for (const cited of await sheet.locator('.class-cites').allTextContents()) {
      expect(cited).toMatch(/^\[\d+(?:, \d+)*\]$/)
    }
  })

  test('the first screen of the page leads to it, in the language spoken', async () => {
    const { page } = await visit(PHONE, { hash: '#/es' })
    await page.locator('.way-how-to a').click()
    await page.getByRole('heading', { name: 'Pregunte cómo se hace…' }).waitFor()
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('es')
  })
})
