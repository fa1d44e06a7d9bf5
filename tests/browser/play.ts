import type { Page } from 'playwright-core'
import type { Jar } from '../helpers/jars.mjs'

export const TREE = 'kombucha-jar'
const MOST_SCREENS = 18

/** The observation that the screen asks for; null at the outcome. */
export async function askedOn(page: Page): Promise<string | null> {
  const question = page.locator('.question')
  return (await question.count()) === 0 ? null : question.getAttribute('data-observation')
}

/** Chooses the ferment and waits for the first question. */
export async function begin(page: Page, tree = TREE): Promise<void> {
  await page.locator(`[data-tree="${tree}"]`).click()
  await page.locator('.question').waitFor()
}

/** Answers screen after screen as the jar's caller does; `each` sees every screen, the outcome too. */
export async function play(
  page: Page,
  jar: Jar,
  each: (observation: string | null) => Promise<unknown> = async () => undefined
): Promise<void> {
  await begin(page)
  await playOn(page, jar, null, each)
}

/** Goes on from where the walk stands, until `until` is asked or the outcome is there. */
export async function playOn(
  page: Page,
  jar: Jar,
  until: string | null = null,
  each: (observation: string | null) => Promise<unknown> = async () => undefined
): Promise<void> {
  for (let screen = 0; screen < MOST_SCREENS; screen++) {
    const observation = await askedOn(page)
    await each(observation)
    if (observation === null || observation === until) return
    await openWhereTold(page, jar)
    await answer(page, observation, jar[observation])
    await left(page, observation)
  }
  throw new Error('the walk does not end')
}

/** Waits until the page shows something else than this question. */
async function left(page: Page, observation: string): Promise<void> {
  const next = `.question:not([data-observation="${observation}"]), .outcome, .emergency`
  await page.locator(next).first().waitFor()
}

/** Opens a list of signs that one line over all of them stands for; nothing where it is open. */
export async function openList(page: Page): Promise<void> {
  const yes = page.locator('.question .sweep [data-answer="some"]')
  if ((await yes.count()) > 0) await yes.click()
}

/** Opens the lists of two screens of signs asked as one, where of the second something is so. */
export async function openWhereTold(page: Page, jar: Jar): Promise<void> {
  const along = page.locator('.question .sweep-along')
  if ((await along.count()) === 0) return
  const second = (await along.getAttribute('data-along')) ?? ''
  if (jar[second] !== 'none') await openList(page)
}

/** Gives one answer: an answer id, signs, or a reading with its instrument. */
export async function answer(
  page: Page,
  observation: string,
  told: string | readonly string[] | undefined
): Promise<void> {
  if (told === undefined) throw new Error(`this jar says nothing of ${observation}`)
  const question = page.locator('.question')
  if (told !== 'none') await openList(page)
  if (typeof told === 'string') {
    await question.locator(`[data-answer="${told}"]`).click()
    return
  }
  const [reading = '', instrument] = told
  if (/^\d/.test(reading)) {
    if (instrument !== undefined) await question.locator(`input[value="${instrument}"]`).check()
    await page.locator(`#measure-${observation}`).fill(reading)
    await question.locator('[type="submit"]').click()
    return
  }
  for (const sign of told) await question.locator(`[data-sign="${sign}"]`).check()
  await question.locator('[data-answer="none"]').click()
}

/** The verdicts on the outcome's cards, first one first. */
export async function verdictsOn(page: Page): Promise<readonly (string | null)[]> {
  const cards = await page.locator('[data-verdict]').all()
  return Promise.all(cards.map(card => card.getAttribute('data-verdict')))
}
