import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import jar from '../../locales/en/kombucha-jar.json' with { type: 'json' }
import ui from '../../locales/en/ui.json' with { type: 'json' }
import { JARS } from '../helpers/jars.mjs'
import { askedOn, begin, play, playOn } from './play.ts'
import { useVisits } from './visit.ts'

const { errors } = ui
const healthy = JARS['merging-islands'] ?? {}
const span = (from: string, to: string) =>
  errors['out-of-span'].replace('{{from}}', from).replace('{{to}}', to)

async function type(page: Page, observation: string, text: string) {
  await page.locator(`#measure-${observation}`).fill(text)
  await page.locator(`form:has(#measure-${observation}) [type="submit"]`).click()
}

/** What may be typed where a number belongs, and the sentence that must answer it. */
const NONSENSE: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'jar-ph': {
    '': errors['not-a-number-ph'],
    '15': span('0', '14'),
    sour: errors['not-a-number-ph'],
    '14.01': span('0', '14'),
    '3.2.1': errors['not-a-number-ph'],
    '-3': errors['not-a-number-ph'],
    '3e0': errors['not-a-number-ph'],
    '1,234.5': errors['not-a-number-ph']
  },
  day: {
    '': errors['not-a-number-day'],
    '3.5': errors['not-whole'],
    'a week': errors['not-a-number-day'],
    '3,5': errors['not-whole'],
    '99999': span('0', '3650')
  }
}

describe('a number that makes no sense', () => {
  const visit = useVisits()

  test.each(Object.entries(NONSENSE))(
    'in %s is told beside the field, which keeps it',
    async (observation, nonsense) => {
      const { page } = await visit()
      await begin(page)
      await playOn(page, healthy, observation)
      for (const [text, sentence] of Object.entries(nonsense)) {
        await type(page, observation, text)

        await page.locator('.error', { hasText: sentence }).waitFor()
        const field = page.locator(`#measure-${observation}:focus`)
        expect(await field.inputValue()).toBe(text)
        expect(await field.getAttribute('aria-invalid')).toBe('true')
        expect(await askedOn(page)).toBe(observation)
      }
    }
  )

  test('is forgiven as soon as a sensible one is sent', async () => {
    const { page } = await visit()
    await begin(page)
    await playOn(page, healthy, 'jar-ph')
    await type(page, 'jar-ph', 'sour')
    await page.locator('.error').waitFor()
    await type(page, 'jar-ph', ' 3,2 ')

    await page.locator('[data-observation="drinkers"]').waitFor()
    await playOn(page, healthy)
    await page.locator('.outcome').waitFor()
    await page.getByRole('button', { name: 'pH 3.2' }).waitFor()
  })

  test('need not be one: weeks are counted in days', async () => {
    const { page } = await visit()
    await begin(page)
    await playOn(page, healthy, 'day')
    await page.getByRole('radio', { name: ui['unit-names'].weeks }).check()
    await type(page, 'day', '1.5')

    await page.locator('.question[data-observation="jar-ph"]').waitFor()
    await page.getByRole('button', { name: '10 days' }).waitFor()
  })
})

describe('a drawn strip', () => {
  const visit = useVisits()

  test.each([
    ['narrow-strip', '3.4'],
    ['wide-strip', '3']
  ])('that is a %s fills in the number where it is pressed', async (instrument, ph) => {
    const { page } = await visit()
    await begin(page)
    await playOn(page, healthy, 'jar-ph')
    expect(await page.locator('.strip').count()).toBe(0)
    await page.locator(`input[value="${instrument}"]`).check()
    await page.getByRole('button', { name: ph, exact: true }).click()

    expect(await page.locator('#measure-jar-ph').inputValue()).toBe(ph)
    expect(await page.locator('.strip-block[aria-pressed="true"]').textContent()).toBe(ph)
    expect(await askedOn(page)).toBe('jar-ph')
  })
})

describe('a room in degrees Celsius', () => {
  const visit = useVisits()
  const tell = async (page: Page, unit: 'celsius' | 'fahrenheit', text: string) => {
    const folded = page.locator('.after:not([open]) > summary')
    if ((await folded.count()) > 0) await folded.click()
    await page.locator('.after-open[data-observation="room-temperature"]').click()
    await page.getByRole('radio', { name: ui['unit-names'][unit] }).check()
    await type(page, 'room-temperature', text)
  }

  test('is not taken for as many degrees Fahrenheit', async () => {
    const { page } = await visit()
    await play(page, healthy)
    await tell(page, 'celsius', '26')
    await page.locator('.after-told').waitFor()
    expect(await page.getByText(jar.notes['too-cold']).count()).toBe(0)

    await tell(page, 'fahrenheit', '26')
    await page.getByText(jar.notes['too-cold']).waitFor()
  })

  test('has its bounds told in degrees Celsius', async () => {
    const { page } = await visit()
    await play(page, healthy)
    await tell(page, 'celsius', '200')
    expect(await page.locator('.error').textContent()).toBe(span('-6.7', '54.4'))
  })
})
