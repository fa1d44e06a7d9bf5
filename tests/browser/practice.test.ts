import { readFileSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { axeFaults } from './axe.ts'
import { atDesk, say } from './desk-call.ts'
import { useVisits } from './visit.ts'

const visit = useVisits()

async function toPractice(caller: string, options = {}) {
  const opened = await visit(
    { viewport: { width: 1280, height: 800 }, ...options },
    { hash: 'practice.html' }
  )
  const { page } = opened
  await atDesk(page)
  await page.locator('select[name="caller"]').selectOption(caller)
  await atDesk(page)
  return opened
}

/** Presses Tab until what is focused fits. */
async function tabTo(page: Page, selector: string) {
  for (let presses = 0; presses < 60; presses++) {
    if (await page.evaluate(what => document.activeElement?.matches(what) === true, selector))
      return
    await page.keyboard.press('Tab')
  }
  throw new Error(`Tab does not reach ${selector}`)
}

/** Asks the caller each question that is left, and enters that it is none or ordinary, until an outcome is told. */
async function answerTheRest(page: Page) {
  const compare = page.locator('[data-action="compare"]:enabled')
  for (let asked = 0; asked < 14 && (await compare.count()) === 0; asked++) {
    await page.locator('[data-action="ask-caller"]').focus()
    await page.keyboard.press('Enter')
    await page.locator('.practice-asks strong').waitFor()
    const observation = await page.locator('.question').getAttribute('data-observation')
    const usual = ['none', 'no', 'first-look', 'plain-color']
    const answer = page.locator(usual.map(id => `.question [data-answer="${id}"]`).join(', '))
    await answer.first().focus()
    await page.keyboard.press('Enter')
    const next = `.question:not([data-observation="${observation}"]), .outcome`
    await page.locator(next).first().waitFor()
  }
  await compare.waitFor()
}

const sides = (page: Page) =>
  page
    .locator('.practice-comparison [data-side]')
    .evaluateAll(rows =>
      Object.fromEntries(
        rows.map(row => [row.getAttribute('data-side'), row.getAttribute('data-apart')])
      )
    )

describe('a practice call', () => {
  test('is played by keyboard to the comparison, kept, and never recorded', async () => {
    const { page, requests } = await toPractice('white-fuzz')
    const before = requests.length
    await tabTo(page, 'input[name="volunteer"]')
    await page.keyboard.type('7')
    expect(await page.locator('.practice-tells').textContent()).toContain('stands up like fur')
    expect(await page.locator('.practice-sees [role="img"] svg').count()).toBe(2)
    expect(await page.locator('[data-action="compare"]').isDisabled()).toBe(true)
    await tabTo(page, '.fact-input')
    await page.keyboard.type('dry, like fur, 9 days, nobody drank any and everyone is fine')
    await page.keyboard.press('Enter')
    await page.locator('.decided', { hasText: 'Likely mold' }).waitFor()
    await answerTheRest(page)
    await page.locator('[data-action="compare"]').focus()
    await page.keyboard.press('Enter')
    await page.locator('.practice-comparison').waitFor()
    expect(await sides(page)).toEqual({ person: '0', container: '0', batch: '0', use: '0' })
    expect(await page.locator('[data-part="decided"]').textContent()).toContain('like fur')
    expect(await axeFaults(page)).toEqual([])
    expect(await page.locator('.record').count()).toBe(0)
    const kept = await page.evaluate(async () => ({
      lines: (localStorage.getItem('jarside-practice-calls') ?? '').trim().split('\n'),
      keys: Object.keys(localStorage)
    }))
    expect(kept.keys).toEqual(['jarside-practice-calls'])
    expect(kept.lines.map(line => JSON.parse(line))).toMatchObject([
      { practice: 1, caller: 'white-fuzz', volunteer: 7, given: { batch: 'likely-mold' } }
    ])
    expect(requests.slice(before).filter(each => !each.includes('/assets/'))).toEqual([])
  })

  test('that misses a danger says so, and by how many levels', async () => {
    const { page } = await toPractice('white-fuzz')
    await say(page, 'brown strings, 9 days, pH 3.1 meter, nobody drank any and everyone is fine')
    await answerTheRest(page)
    await page.locator('[data-action="compare"]').click()
    expect(await page.locator('.practice-unseen').count()).toBe(1)
    const { batch, use, person } = await sides(page)
    expect(Number(batch)).toBeLessThan(-1)
    expect([use, person]).toEqual(['-2', '0'])
    const decided = page.locator('[data-part="decided"] li')
    expect(await decided.getAttribute('data-entered')).toBe('otherwise')
    // Without a number nothing is kept.
    expect(await page.evaluate(() => Object.keys(localStorage))).toEqual([])
  })

  test('shows what a caller who speaks Spanish tells in both languages', async () => {
    const { page } = await toPractice('flies-in-the-tea')
    const [spanish, english] = await page.locator('.practice-tells blockquote').allTextContents()
    expect(spanish).toContain('mi kombucha tiene visitas')
    expect(english).toContain('my kombucha has visitors')
  })
})

describe('the results', () => {
  const line = (id: string, volunteer: number, batch: string, use: string) =>
    JSON.stringify({
      practice: 1,
      id,
      caller: 'white-fuzz',
      tree: 'kombucha-jar',
      took: 'kombucha-jar',
      fingerprint: 'abcdef0123456789',
      volunteer,
      day: '2026-11-29',
      given: { person: null, container: null, batch, use },
      expected: { person: null, container: null, batch: 'likely-mold', use: 'never' }
    })

  test('tell dangers first, of one volunteer and of all, and come out as a file', async () => {
    const { page } = await toPractice('white-fuzz')
    const lines = [line('a', 7, 'likely-mold', 'never'), line('b', 9, 'normal-growth', 'not-yet')]
    await page.evaluate(
      text => localStorage.setItem('jarside-practice-calls', `${text}\n`),
      lines.join('\n')
    )
    await page.reload()
    await atDesk(page)
    await page.locator('[data-action="results"]').click()
    const seen = page.locator('[data-rate="seen"]')
    expect(await seen.textContent()).toContain('1 of 2')
    expect(await page.locator('.practice-results li').count()).toBe(1)
    await page.locator('select[name="whose"]').selectOption('7')
    expect(await seen.textContent()).toContain('1 of 1')
    expect(await axeFaults(page)).toEqual([])
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.locator('[data-action="lines"]').click()
    ])
    expect(readFileSync(await file.path(), 'utf8')).toBe(`${lines[0]}\n`)
  })
})
