import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import kombucha from '../../locales/en/kombucha-jar.json' with { type: 'json' }
import { JARS } from '../helpers/jars.mjs'
import { answer, askedOn, begin, play, playOn, verdictsOn } from './play.ts'
import { useVisits } from './visit.ts'

const healthy = JARS['merging-islands'] ?? {}
const bead = (page: Page, observation: string) =>
  page.locator(`button.bead[data-observation="${observation}"]`)
const moves = (page: Page, move: 'Back' | 'Start over') =>
  page.locator('.masthead').getByRole('button', { name: move })
const question = (page: Page, observation: string) =>
  page.locator(`.question[data-observation="${observation}"]`)

describe('an earlier answer', () => {
  const visit = useVisits()

  test('is changed in place by its bead, and the others stay', async () => {
    const { page } = await visit()
    await play(page, healthy)
    await bead(page, 'surface-texture').click()
    await question(page, 'surface-texture').waitFor()
    const told = page.locator('.card[aria-pressed="true"]')
    expect(await told.getAttribute('data-answer')).toBe('wet-islands')
    await answer(page, 'surface-texture', 'dry-fuzzy')

    await page.locator('.outcome').waitFor()
    expect(await verdictsOn(page)).toEqual(['likely-mold'])
    await bead(page, 'surface-texture').click()
    await answer(page, 'surface-texture', 'wet-film')
    await page.locator('.outcome').waitFor()
    expect(await verdictsOn(page)).toEqual(['normal-growth'])
    expect(await bead(page, 'jar-ph').getAttribute('aria-label')).toContain('3.2')
  })

  test('is asked for again by going back from the outcome', async () => {
    const { page } = await visit()
    await play(page, healthy)
    await moves(page, 'Back').click()
    await question(page, 'drinkers').waitFor()
    await moves(page, 'Back').click()

    await question(page, 'jar-ph').waitFor()
    expect(await page.locator('#measure-jar-ph').inputValue()).toBe('3.2')
    await moves(page, 'Back').click()
    await question(page, 'day').waitFor()
    expect(await page.locator('#measure-day').inputValue()).toBe('9')
    await page.locator('#measure-day').fill('3')
    await page.locator('[type="submit"]').click()
    // A young jar is asked for its starter; its reading was told already.
    await question(page, 'starter-kind').waitFor()
    await page.locator('[data-answer="mature-liquid"]').click()
    await page.getByText(kombucha.use['not-yet']).waitFor()
  })

  test('that marked a sign is off once the mark is taken off', async () => {
    const { page } = await visit()
    await begin(page)
    await playOn(page, { ...healthy, 'jar-signs': ['insects-inside'] }, 'surface-texture')
    await moves(page, 'Back').click()
    await question(page, 'jar-signs').waitFor()
    expect(await page.locator('[data-sign="insects-inside"]').isChecked()).toBe(true)
    await page.locator('[data-sign="insects-inside"]').uncheck()
    await answer(page, 'jar-signs', 'none')
    await question(page, 'surface-texture').waitFor()

    await playOn(page, healthy)
    expect(await verdictsOn(page)).toEqual(['normal-growth'])
  })

  test('about an emergency can be taken back, and the walk goes on', async () => {
    const { page } = await visit()
    await play(page, JARS.emergency ?? {})
    await page.locator('.emergency button').click()
    await question(page, 'people-signs').waitFor()
    await page.locator('[data-sign="severe-symptoms"]').uncheck()
    await answer(page, 'people-signs', 'none')
    await question(page, 'container-signs').waitFor()

    await playOn(page, healthy)
    expect(await verdictsOn(page)).toEqual(['normal-growth'])
  })

  test('is gone after starting over, with everything else', async () => {
    const { page } = await visit()
    await play(page, { ...healthy, drinkers: ['someone-drank'] })
    await moves(page, 'Start over').click()
    await page.locator('.choose h1:focus').waitFor()
    expect(await page.title()).toMatch(/^What is on your counter/)
    await begin(page)

    expect(await askedOn(page)).toBe('people-signs')
    expect(await page.locator('button.bead').count()).toBe(0)
    expect(await page.locator('input:checked').count()).toBe(0)
  })

  test('given after the outcome can be replaced and changes no verdict', async () => {
    const { page } = await visit()
    await play(page, healthy)
    const meanings = async () => (await page.locator('.section').allTextContents()).join('\n')
    const before = await meanings()
    const cover = page.locator('.after-open[data-observation="jar-cover"]')
    await page.locator('.after > summary').click()
    const give = async (told: string) => {
      await cover.click()
      await page.locator(`.after-answers [data-answer="${told}"]`).click()
      await page.locator('.after-answers').waitFor({ state: 'detached' })
    }
    await give('loose-weave')
    expect(await meanings()).not.toBe(before)

    await give('tight-cloth')
    expect(await meanings()).toBe(before)
    expect(await verdictsOn(page)).toEqual(['normal-growth'])
  })
})
