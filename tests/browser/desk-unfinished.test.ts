import { describe, expect, test } from 'vitest'
import { JARS } from '../helpers/jars.mjs'
import { atDesk, callOn, say } from './desk-call.ts'
import { useVisits } from './visit.ts'

const visit = useVisits()
const toDesk = async () => {
  const { page } = await visit(
    { permissions: ['clipboard-read', 'clipboard-write'] },
    { hash: 'desk.html' }
  )
  await atDesk(page)
  return page
}

describe('a call that the page lost', () => {
  test('is forgotten where nobody wants it, and by the next call', async () => {
    const page = await toDesk()
    await say(page, 'hairy')
    await page.reload()
    await atDesk(page)
    await page.locator('[data-action="drop-kept"]').click()
    await page.reload()
    await atDesk(page)
    expect(await page.locator('.desk-kept').count()).toBe(0)
    await say(page, 'hairy')
    await page.getByRole('button', { name: 'New call' }).click()
    await page.reload()
    await atDesk(page)
    expect(await page.locator('.desk-kept').count()).toBe(0)
  })
})

describe('an outcome at the desk', () => {
  test('is told back, ticked off, copied short or for the specialist, and calls no office', async () => {
    const page = await toDesk()
    await callOn(page, JARS['film-and-no-reading'] ?? JARS['new-film'] ?? {})
    await page.locator('.outcome').waitFor()
    expect(await page.locator('.desk-teach-back').textContent()).toContain('in your own words')
    const tick = page.locator('.outcome .do-now input[type="checkbox"]').first()
    await tick.check()
    expect(await tick.isChecked()).toBe(true)
    expect(await page.locator('.outcome .calls').allTextContents()).not.toContain('555-0110')

    const copied = async (action: string) => {
      await page.locator(`[data-action="${action}"]`).click()
      await page.locator('.keep-it-done:not(:empty)').waitFor()
      return page.evaluate(() => navigator.clipboard.readText())
    }
    const message = await copied('copy-message')
    expect(message.length).toBeLessThanOrEqual(268)
    expect(message).toContain('larkspur.example')
    const summary = await copied('copy-summary')
    expect(summary).toContain('Edition 1')
    expect(summary).toContain('nothing about people')
    expect(await copied('copy-doubt')).toMatch(/^This advice seems wrong/)
  })
})
