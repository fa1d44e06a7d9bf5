import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { JARS } from '../helpers/jars.mjs'
import { axeFaults } from './axe.ts'
import { atDesk, callUntil, say } from './desk-call.ts'
import { openList, verdictsOn } from './play.ts'
import { useVisits } from './visit.ts'

const visit = useVisits()
const toDesk = async (tree = 'kombucha-jar') => {
  const { page } = await visit({}, { hash: 'desk.html' })
  await atDesk(page)
  if (tree !== 'kombucha-jar') {
    await page.locator('.desk-tree').selectOption(tree)
    await page.locator('.fact-input:focus').waitFor()
  }
  return page
}

/** The words of the first card on the sheet, and how large its heading is. */
const firstCard = (page: Page) =>
  page
    .locator('.desk-main .verdict')
    .first()
    .evaluate(card => {
      const heading = card.querySelector('h1, h2')
      return {
        id: card.getAttribute('data-verdict'),
        heading: heading?.textContent,
        size: heading && getComputedStyle(heading).fontSize,
        first: card.querySelector('.do-now li')?.textContent
      }
    })

/** What sends somebody back to a jar. */
const SENDS_BACK =
  /wipe|brighter light|look for a date|look straight|look through|ask a second person/i

describe('a danger that was told', () => {
  test('stands first as soon as it is certain, in the words and size of the outcome', async () => {
    const page = await toDesk('kombucha-bottle')
    await say(page, 'one is hissing')
    const first = page.locator('.desk-main > *').first()
    expect(await first.getAttribute('class')).toBe('at-once')
    const told = await firstCard(page)
    expect(told).toMatchObject({
      id: 'pressure-hazard',
      first: expect.stringMatching(/^Leave all where they are\./)
    })
    // The cursor stays in the field: more may follow.
    expect(await page.locator('.fact-input:focus').count()).toBe(1)
    for (let screen = 0; screen < 14; screen++) {
      if ((await page.locator('.outcome').count()) > 0) break
      const text = (await page.locator('.desk-main').textContent()) ?? ''
      expect(text).not.toMatch(SENDS_BACK)
      expect(await firstCard(page)).toEqual(told)
      const asked = await page.locator('.question').getAttribute('data-observation')
      await openList(page)
      await page.locator('.question [data-answer="unsure"]').click()
      await page.locator(`.question:not([data-observation="${asked}"]), .outcome`).first().waitFor()
    }
    expect(await firstCard(page)).toEqual(told)
    expect(await page.locator('.after').count()).toBe(0)
  })

  test('is said alike whether it was typed or answered', async () => {
    const typed = await toDesk()
    await say(typed, 'it exploded')
    const answered = await toDesk()
    await callUntil(answered, JARS['burst-jar'] ?? {}, 'jar-signs')
    expect(await firstCard(answered)).toEqual(await firstCard(typed))
    expect(await answered.locator('.alarm').count()).toBe(0)
    expect(await answered.locator('h1').textContent()).toMatch(/^From memory/)
  })

  test('of a person stands over the questions too, and each is said once', async () => {
    const page = await toDesk()
    await say(page, 'bleach in it, drank cleaner, jar exploded')
    expect(await verdictsOn(page)).toEqual(['pressure-hazard', 'poison-help'])
    expect(await axeFaults(page)).toEqual([])
  })

  test('is gone when the fact was a mistake', async () => {
    const page = await toDesk()
    await say(page, 'it exploded')
    await page.locator('.fact-remove').click()
    expect(await page.locator('.at-once .verdict').count()).toBe(0)
  })
})
