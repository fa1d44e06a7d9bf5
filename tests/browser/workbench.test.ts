import { describe, expect, test } from 'vitest'
import { axeFaults } from './axe.ts'
import { useVisits } from './visit.ts'

const visit = useVisits()
const at = (query: string) => ({ hash: `workbench.html#${query}` })
const CALCULATORS = ['mix', 'course', 'gas', 'bleach', 'salt', 'brix', 'agree']

describe('the workbench', () => {
  test('has every calculator, each with a result and without a fault for assistive programs', async () => {
    const { page } = await visit({}, at(''))
    for (const id of CALCULATORS) {
      await page.locator(`[data-calculator="${id}"]`).click()
      await page.locator(`#calculator-${id}`).waitFor()
      expect(await page.locator('.calculator-result p').count()).toBeGreaterThan(1)
      expect(await axeFaults(page)).toEqual([])
    }
  })

  test('keeps what was typed in its link', async () => {
    const { page } = await visit({}, at('calculator=bleach&label=8.25'))
    expect(await page.locator('.calculator-first').textContent()).toContain('1½ teaspoons')
    await page.locator('#field-label').fill('6')
    await expect
      .poll(() => page.locator('.calculator-first').textContent())
      .toContain('2 teaspoons')
    await expect.poll(() => page.url()).toContain('label=6')
    await page.reload()
    expect(await page.locator('#field-label').inputValue()).toBe('6')
  })

  test('redraws its chart while a slider moves, and the table behind it says the same', async () => {
    const { page } = await visit({}, at('calculator=mix'))
    const before = await page.locator('.chart-reading circle').getAttribute('cx')
    await page.locator('input[type="range"]').focus()
    await page.keyboard.press('ArrowRight')
    await page.keyboard.press('ArrowRight')
    await expect.poll(() => page.locator('#field-starter').inputValue()).toBe('2.5')
    await expect
      .poll(() => page.locator('.chart-reading circle').getAttribute('cx'))
      .not.toBe(before)
    await page.locator('.chart-table summary').click()
    expect(await page.locator('.chart-table tbody tr').count()).toBeGreaterThan(10)
  })

  test('takes readings as a spreadsheet gives them, and says which lines it could not', async () => {
    const { page } = await visit({}, at('calculator=course'))
    await page.locator('#field-readings').fill('Date\tpH\n11/17/2026\t4,5\n11/25/2026\t4,4\nsour')
    await expect
      .poll(() => page.locator('.calculator-first').textContent())
      .toMatch(/above 4.2: throw it out/)
    expect(await page.locator('.calculator-result .error').textContent()).toContain('sour')
    expect(await page.locator('.chart-reading').count()).toBe(2)
  })

  test('draws no band where nothing is published', async () => {
    const { page } = await visit({}, at('calculator=course&at=60'))
    expect(await page.locator('.calculator-result').textContent()).toContain('no published range')
    expect(await page.locator('.chart-band').count()).toBe(0)
  })

  test('says of a number that cannot be what could', async () => {
    const { page } = await visit({}, at('calculator=mix&starter=40'))
    expect(await page.locator('.calculator-result .error').textContent()).toMatch(/has to be from/)
    expect(await page.locator('#field-starter').getAttribute('aria-invalid')).toBe('true')
    await page.locator('#field-starter').fill('two')
    await expect
      .poll(() => page.locator('.calculator-result .error').textContent())
      .toMatch(/in digits/)
  })

  test('speaks Spanish, in the page and in its link', async () => {
    const { page } = await visit({ viewport: { width: 360, height: 740 } }, at('calculator=gas'))
    await page.locator('[data-language="es"]').click()
    await page.getByRole('heading', { name: 'Presión en la botella' }).waitFor()
    await expect.poll(() => page.url()).toContain('lang=es')
    expect(await axeFaults(page)).toEqual([])
    const width = await page.evaluate(() => document.documentElement.scrollWidth)
    expect(width).toBeLessThanOrEqual(360)
  })
})
