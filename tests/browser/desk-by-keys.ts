import type { Page } from 'playwright-core'
import type { SeenScreen } from '../../bench/reading/measure.ts'
import { seen } from '../../bench/reading/seen.mjs'
import type { Jar } from '../helpers/jars.mjs'
import { askedOn } from './play.ts'

const MOST_PRESSES = 60
const MOST_QUESTIONS = 14

/** Somebody at the desk without a mouse; what is pressed is counted, and what is read aloud kept. */
export interface Keyboard {
  /** An answer by its key, a mark, a line or a number with its Enter, a choice: one each. */
  count(): number
  readonly screens: readonly SeenScreen[]
  /** Types a line into the field and sends it. */
  line(text: string): Promise<void>
  /** Goes to what fits by Tab, backward first where it stands before, and presses it. */
  press(selector: string, key?: string): Promise<void>
  /** Answers what is asked as the jar is, until an outcome is told. */
  answer(jar: Jar): Promise<void>
}

export function atKeyboard(page: Page): Keyboard {
  let count = 0
  const screens: SeenScreen[] = []
  const look = async (observation: string | null) => {
    screens.push({ observation, presses: 0, ...(await page.evaluate(seen)) })
  }
  const has = (selector: string) =>
    page.evaluate(what => document.activeElement?.matches(what) === true, selector)
  const key = async (pressed: string) => {
    await page.keyboard.press(pressed)
    count++
  }
  const toField = async () => {
    if (await has('.fact-input')) return
    await key('/')
  }
  const toQuestion = async () => {
    if (await page.evaluate(() => document.activeElement?.closest('.question') !== null)) return
    await key('Escape')
  }
  /** The key of an answer as it stands on the screen. */
  const keyed = async (selector: string) => {
    const shown = page.locator(`.question ${selector}`).first()
    await shown.waitFor()
    await key((await shown.getAttribute('data-key')) ?? '')
  }
  const tabTo = async (selector: string) => {
    const back = await page.evaluate(what => {
      const [to, from] = [document.querySelector(what), document.activeElement]
      return to && from ? (to.compareDocumentPosition(from) & 4) !== 0 : false
    }, selector)
    for (let presses = 0; presses < MOST_PRESSES; presses++) {
      if (await has(selector)) return
      await page.keyboard.press(back ? 'Shift+Tab' : 'Tab')
    }
    throw new Error(`Tab does not reach ${selector}`)
  }
  const answerOne = async (observation: string, jar: Jar) => {
    const told = jar[observation]
    if (told === undefined) throw new Error(`this jar says nothing of ${observation}`)
    const along = page.locator('.question [data-along]')
    const second = (await along.count()) > 0 ? await along.getAttribute('data-along') : null
    const some = told !== 'none' || (second !== null && jar[second] !== 'none')
    if (some && (await page.locator('.question .sweep [data-answer="some"]').count()) > 0) {
      await keyed('.sweep [data-answer="some"]')
      await page.locator('.question .sweep').waitFor({ state: 'detached' })
      await look(observation)
    }
    if (typeof told === 'string') return await keyed(`[data-answer="${told}"]`)
    const [reading = '', instrument] = told
    if (/^\d/.test(reading)) {
      if (instrument !== undefined) {
        await tabTo(`input[name="instrument-${observation}"]`)
        const by = page.locator(`input[name="instrument-${observation}"][value="${instrument}"]`)
        for (let down = 0; down < 6 && !(await by.isChecked()); down++) {
          await page.keyboard.press('ArrowDown')
        }
        count++
      }
      await tabTo(`#measure-${observation}`)
      await page.keyboard.type(reading)
      return await key('Enter')
    }
    for (const sign of told) {
      // What was told before stands marked already.
      if (!(await page.locator(`[data-sign="${sign}"]`).isChecked())) {
        await keyed(`[data-sign="${sign}"]`)
      }
    }
    await keyed('[data-answer="none"]')
  }
  return {
    count: () => count,
    screens,
    async line(text) {
      await toField()
      await page.keyboard.type(text)
      await key('Enter')
    },
    async press(selector, pressed = 'Enter') {
      await page.locator(selector).first().waitFor()
      await tabTo(selector)
      await key(pressed)
    },
    async answer(jar) {
      for (let question = 0; question < MOST_QUESTIONS; question++) {
        const observation = await askedOn(page)
        if (observation === null) return look(null)
        await look(observation)
        await toQuestion()
        if ((await page.locator('[data-action="stop-here"]').count()) > 0) await key('s')
        else await answerOne(observation, jar)
        const next = `.question:not([data-observation="${observation}"]), .outcome, .emergency`
        await page.locator(next).first().waitFor()
      }
      throw new Error('the call does not end')
    }
  }
}
