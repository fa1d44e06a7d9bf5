import type { Page } from 'playwright-core'
import { afterAll, describe, expect, test } from 'vitest'
import { aloud } from '../../bench/reading/limits.ts'
import { readingOf } from '../../bench/reading/measure.ts'
import { axeFaults } from './axe.ts'
import { atKeyboard, type Keyboard } from './desk-by-keys.ts'
import { atDesk, factsOn } from './desk-call.ts'
import { CALLS, type CallStep, type DeskCall } from './desk-calls.ts'
import { databasesOf, entriesOf, otherStorageOf } from './log-database.ts'
import { verdictsOn } from './play.ts'
import { useVisits } from './visit.ts'

const visit = useVisits()

/** What a caller who volunteers three facts costs, in the middle of all such calls. */
const MOST_KEYS = 9
// The goal is 350 words: what is above it is read in every call, to find an emergency and who drinks it.
const MOST_WORDS_ALOUD = 420

/** The fields of a contact, and nothing else there could be. */
const FIELDS = [
  ...['kind', 'id', 'edit', 'mark', 'date', 'volunteer', 'tree', 'edition', 'fingerprint', 'topic'],
  ...['referred', 'batch', 'container', 'sheet', 'referral', 'method', 'direct', 'count'],
  ...['minutes', 'language', 'area', 'knowHow', 'state', 'review']
]
/** Words that would tell that a person is ill, at risk, or was sent for help. */
const TELLTALE = /person|symptom|sign|breath|fever|grand|ill|sick|risk|doctor|emergency|poison/i

const costs: { keys: number; words: number }[] = []

async function take(page: Page, desk: Keyboard, step: CallStep) {
  if ('say' in step) {
    await desk.line(step.say)
    await expect.poll(async () => (await factsOn(page)).length).toBe(step.facts)
  } else if ('speaks' in step) {
    await desk.press(`.desk-head [data-language="${step.speaks}"]`)
    await page.locator('.question .second').first().waitFor()
    await page.waitForLoadState('networkidle')
  } else if ('changeTo' in step) {
    await desk.press(`.desk-elsewhere [data-to="${step.changeTo}"]`)
    await page.locator('.desk-elsewhere .notice').waitFor({ state: 'detached' })
    await atDesk(page)
    await expect.poll(async () => (await factsOn(page)).length).toBeGreaterThan(0)
  } else if ('crash' in step) {
    const kept = await page.evaluate(() => JSON.stringify({ ...localStorage }))
    expect(kept).toContain('dry-fuzzy')
    expect(kept).not.toMatch(/people|drinkers|risk|drank|hairy/)
    await page.reload()
    await atDesk(page)
    expect(await axeFaults(page)).toEqual([])
    await desk.press('[data-action="take-up"]')
    await page.locator('.desk-kept').waitFor({ state: 'detached' })
    expect(await factsOn(page)).toHaveLength(step.facts)
    expect(await page.locator('.question').getAttribute('data-observation')).toBe('people-signs')
  } else {
    await page.locator('.desk-emergency').waitFor()
    await record(page, desk, [])
    await desk.press('[data-action="next-call"]')
    await atDesk(page)
  }
}

/** F2 opens the record with everything filled in, Enter saves it. */
async function record(page: Page, desk: Keyboard, marks: readonly string[]) {
  await page.keyboard.press('F2')
  await page.locator('[data-action="record"]:focus').waitFor()
  for (const mark of marks) await desk.press(`.record-form [name="${mark}"]`, 'Space')
  await page.keyboard.press('Enter')
  await page.locator('.record-done p').waitFor()
}

async function writeSlip(page: Page, desk: Keyboard) {
  await desk.press('.slip > summary')
  await page.keyboard.press('Tab')
  await page.keyboard.type('Robin')
  await page.keyboard.press('Tab')
  await page.keyboard.type('555-0142')
  await page.keyboard.press('Enter')
  await expect.poll(async () => (await slipsOf(page)).length).toBe(1)
}

const slipsOf = async (page: Page) => (await databasesOf(page))['jarside-call-backs']?.slips ?? []

/** The day at the office, so many days on. */
const dayIn = (page: Page, days: number) =>
  page.evaluate(
    later =>
      new Intl.DateTimeFormat('en-CA', { timeZone: 'America/Chicago' }).format(
        new Date(Date.now() + later * 86_400_000)
      ),
    days
  )

async function live(page: Page, call: DeskCall): Promise<Keyboard> {
  const desk = atKeyboard(page)
  for (const step of call.steps) await take(page, desk, step)
  await desk.answer(call.told)
  return desk
}

describe('a whole call by keyboard', () => {
  test.each(Object.entries(CALLS))('%s', async (_, call) => {
    const { page } = await visit({}, { hash: 'desk.html' })
    await atDesk(page)
    const desk = await live(page, call)
    expect(await verdictsOn(page)).toEqual(call.comesTo.verdicts)
    expect(await page.locator('.desk .use').count()).toBe(call.comesTo.use === null ? 0 : 1)
    if (call.volunteers) {
      const language = call.records.at(-1)?.language === 'es' ? 'es' : 'en'
      const reading = readingOf({ caller: '', place: 'desk', language }, desk.screens, [])
      costs.push({ keys: desk.count(), words: aloud(reading) })
    }
    if (call.slipInDays !== undefined) await writeSlip(page, desk)
    await record(page, desk, call.marks ?? [])

    const entries = await entriesOf(page)
    expect(entries).toMatchObject(call.records)
    // Why somebody was sent for help cannot be told from the record.
    const [alike, ...others] = entries.map(({ id: _id, mark: _mark, ...rest }) => rest)
    for (const other of others) expect(other).toEqual(alike)
    for (const entry of entries) expect(Object.keys(entry)).toEqual(FIELDS)
    const { 'jarside-call-backs': slips, ...log } = await databasesOf(page)
    const stored = JSON.stringify([log, await otherStorageOf(page)])
    expect(stored.match(TELLTALE)).toBeNull()
    if (call.slipInDays !== undefined) {
      const day = await dayIn(page, call.slipInDays)
      expect(slips?.slips).toMatchObject([{ firstName: 'Robin', on: day, recheckOn: day }])
      expect(stored).not.toContain('Robin')
    }
  })

  afterAll(() => {
    const middle = (numbers: readonly number[]) =>
      [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)]
    expect(middle(costs.map(({ keys }) => keys))).toBeLessThanOrEqual(MOST_KEYS)
    expect(middle(costs.map(({ words }) => words))).toBeLessThanOrEqual(MOST_WORDS_ALOUD)
  })
})
