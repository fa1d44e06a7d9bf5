import type { Page } from 'playwright-core'
import type { Jar } from '../helpers/jars.mjs'
import { answer, askedOn, openWhereTold } from './play.ts'

/** Opens the desk as somebody who has just picked up the telephone. */
export async function atDesk(page: Page): Promise<void> {
  await page.locator('.desk .question').waitFor()
  // Callers' own words arrive after the page; a line typed before is taken once they have.
  await page.waitForLoadState('networkidle')
}

/** Types into the field for facts and sends it. */
export async function say(page: Page, line: string): Promise<void> {
  await page.locator('.fact-input').fill(line)
  await page.locator('.fact-input').press('Enter')
}

/** The facts on the strip, as they read. */
export const factsOn = (page: Page): Promise<readonly string[]> =>
  page
    .locator('.fact')
    .evaluateAll(facts =>
      facts.map(fact =>
        ['name', 'answer'].map(part => fact.querySelector(`.fact-${part}`)?.textContent).join(': ')
      )
    )

/** Answers question after question to the outcome, by the keys beside the answers where they have one. */
export const callOn = (page: Page, jar: Jar): Promise<void> => callUntil(page, jar, null)

/** The same until a question is asked; null to the outcome. */
export async function callUntil(page: Page, jar: Jar, until: string | null): Promise<void> {
  for (let screen = 0; screen < 14; screen++) {
    const observation = await askedOn(page)
    if (observation === null || observation === until) return
    await openWhereTold(page, jar)
    const told = jar[observation]
    const one = typeof told === 'string' ? told : null
    const target = page.locator(`.question [data-answer="${one}"][data-key]`)
    if (one !== null && (await target.count()) === 1) {
      const key = await target.getAttribute('data-key')
      await page.locator('.step-heading').focus()
      await page.keyboard.press(key ?? '')
    } else {
      await answer(page, observation, told)
    }
    const next = `.question:not([data-observation="${observation}"]), .outcome, .emergency`
    await page.locator(next).first().waitFor()
  }
  throw new Error('the call does not end')
}
