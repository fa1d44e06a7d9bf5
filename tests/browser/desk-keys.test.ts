import { describe, expect, test } from 'vitest'
import { JARS } from '../helpers/jars.mjs'
import { atDesk, callUntil, factsOn, say } from './desk-call.ts'
import { useVisits } from './visit.ts'

const visit = useVisits()
const toDesk = async (options = {}) => {
  const opened = await visit(options, { hash: 'desk.html' })
  await atDesk(opened.page)
  return opened
}
const typedIn = (page: Awaited<ReturnType<typeof toDesk>>['page']) =>
  page.locator('.fact-input').inputValue()

/** What somebody who has just picked up the telephone types, without a click before it. */
const AT_ONCE = [
  '10 days old, fuzzy',
  'day 20 and ph 3.4',
  'ph 3.0, day 12',
  'he has trouble breathing',
  'es una pelusa blanca',
  'u',
  '0',
  '1 0 1 0'
]

describe('what is typed as soon as a call begins', () => {
  test.each(AT_ONCE)('%j is text in the field and answers nothing', async line => {
    const { page } = await toDesk()
    await page.keyboard.type(line)
    expect(await typedIn(page)).toBe(line)
    expect(await factsOn(page)).toEqual([])
    expect(await page.locator('.question [data-sign]:checked').count()).toBe(0)
  })

  test('is text on the next call too, and after another tree was chosen', async () => {
    const { page } = await toDesk()
    await say(page, 'hairy')
    await page.locator('[data-move="start-over"]').click()
    await page.locator('.fact-input:focus').waitFor()
    await page.keyboard.type('10 days')
    expect(await typedIn(page)).toBe('10 days')
    await page.locator('.desk-tree').selectOption('sourdough-starter')
    await page.locator('.fact-input:focus').waitFor()
    await page.keyboard.type('u0')
    expect(await typedIn(page)).toBe('u0')
    expect(await factsOn(page)).toEqual([])
  })

  test('goes to the field where a click has taken the focus away', async () => {
    const { page } = await toDesk()
    await page.locator('.foot').click()
    await page.evaluate(() => (document.activeElement as HTMLElement).blur())
    await page.keyboard.type('1 week')
    expect(await typedIn(page)).toBe('1 week')
    expect(await factsOn(page)).toEqual([])
  })
})

describe('the keyboard at the desk', () => {
  test('types on in the field after a fact, and answers no question by it', async () => {
    const { page } = await toDesk()
    await callUntil(page, JARS['new-film'] ?? {}, 'surface-texture')
    await page.keyboard.press('/')
    await page.keyboard.type('jelly')
    await page.keyboard.press('Enter')
    await page.locator('.question:not([data-observation="surface-texture"])').waitFor()
    await page.keyboard.type('u0 day 9')
    expect(await page.locator('.fact-input').inputValue()).toBe('u0 day 9')
    expect((await factsOn(page)).at(-1)).toBe('Surface: Wet, one skin or disc')
  })

  test('answers once however long a key is held', async () => {
    const { page } = await toDesk()
    await page.locator('.step-heading').focus()
    await page.keyboard.down('0')
    for (let times = 0; times < 5; times++) await page.keyboard.down('0')
    await page.keyboard.up('0')
    expect((await factsOn(page)).length).toBe(1)
  })

  test('leaves the field with one Escape, offers or not, and shows that keys answer now', async () => {
    const { page } = await toDesk()
    await page.keyboard.type('pink')
    await page.locator('.fact-candidate').first().waitFor()
    expect(await page.locator('.desk').getAttribute('data-keys')).toBe('write')
    await page.keyboard.press('Escape')
    await page.locator('.desk[data-keys="answer"]').waitFor()
    // Yes opens the list, and the same keys mark its signs.
    await page.keyboard.press('1')
    await page.locator('[data-sign="mild-upset"]').waitFor()
    await page.keyboard.press('7')
    expect(await page.locator('[data-sign="mild-upset"]').isChecked()).toBe(true)
    expect(await typedIn(page)).toBe('pink')
  })

  test('answers nothing once that is switched off, and can still leave the field', async () => {
    const { page } = await toDesk()
    await page.locator('[data-switch="answer-by-keys"]').uncheck()
    await page.keyboard.press('Escape')
    await page.locator('.step-heading:focus').waitFor()
    await page.keyboard.type('1u0/')
    expect(await factsOn(page)).toEqual([])
    expect(await page.locator('.question [data-sign]:checked').count()).toBe(0)
    expect(await typedIn(page)).toBe('')
    // The next caller's call is worked the same way.
    await page.locator('[data-move="start-over"]').click()
    await page.locator('.fact-input:focus').waitFor()
    expect(await page.locator('[data-switch="answer-by-keys"]').isChecked()).toBe(false)
  })
})
