import { describe, expect, test } from 'vitest'
import { useEmbeds } from './embed-visit.ts'

describe('an element whose screen throws', () => {
  const open = useEmbeds()

  test('shows whom to call, and the words of the page around it', async () => {
    const { page, faults } = await open('/spanish')
    await page.locator('.question').waitFor()
    await page.evaluate(() => {
      Object.defineProperty(Element.prototype, 'innerHTML', {
        set() {
          throw new Error('no drawing can be shown')
        }
      })
    })
    await page.locator('[data-answer="none"]').click()
    const trouble = page.locator('.trouble')
    await trouble.waitFor()
    expect(await trouble.locator('a[href="tel:911"]').isVisible()).toBe(true)
    expect(await trouble.locator('a[href="tel:18002221222"]').isVisible()).toBe(true)
    expect(await trouble.textContent()).toContain('Si alguien se siente mal')
    expect(await page.getByText('Call the office: 555-0110.').isVisible()).toBe(true)
    expect(await page.locator('.question').count()).toBe(0)
    expect(faults.splice(0).join()).toContain('no drawing can be shown')
  })

  test('never leaves a reader alone in a page that has added something to every object', async () => {
    const { page, faults } = await open('/county', {
      before: page =>
        page.addInitScript(() => {
          // As old scripts do.
          Object.assign(Object.prototype, { theirs: () => 'something' })
        })
    })
    await page.locator('.question').waitFor()
    await page.locator('[data-answer="none"]').click()
    await page.locator('.question[data-observation="container-signs"], .trouble').first().waitFor()
    expect(
      await page.locator('jarside-walk').evaluate(one => one.shadowRoot?.textContent)
    ).toContain('1-800-222-1222')
    // A package of ours may trip over it; what counts is what the reader then sees.
    faults.length = 0
  })
})
