import { describe, expect, test } from 'vitest'
import jar from '../../locales/en/kombucha-jar.json' with { type: 'json' }
import observations from '../../locales/en/observations.json' with { type: 'json' }
import ui from '../../locales/en/ui.json' with { type: 'json' }
import { JARS } from '../helpers/jars.mjs'
import { begin, openList, play, playOn } from './play.ts'
import { ofRole, spokenOn } from './spoken.ts'
import { useVisits } from './visit.ts'

const healthy = JARS['merging-islands'] ?? {}

describe('a screen reader is told', () => {
  const visit = useVisits()

  test('the answer that each bead holds, and that it can be changed', async () => {
    const { page } = await visit()
    await play(page, { ...healthy, 'jar-signs': ['continuous-vessel'] })
    const names = ofRole(await spokenOn(page), 'button').map(({ name }) => name)

    const { 'jar-signs': signs } = jar.observations
    const { 'surface-texture': texture } = observations
    for (const told of [
      signs.signs['continuous-vessel'].label,
      texture.answers['wet-islands'].label,
      'pH 3.2',
      '9 days'
    ]) {
      const bead = names.filter(name => name.includes(told) && name.includes(ui.change))
      expect(bead, told).toHaveLength(1)
    }
  })

  test('the name of every sign, and what it means', async () => {
    const { page } = await visit()
    await begin(page)
    await openList(page)
    // Signs that nobody is asked about stand folded away.
    for (const folded of await page.locator('.signs-noticed summary').all()) await folded.click()
    const boxes = ofRole(await spokenOn(page), 'checkbox')

    const { signs } = observations['people-signs']
    for (const { label, hint } of Object.values(signs)) {
      const [own, unsure, ...more] = boxes.filter(({ name }) => name.includes(label))
      expect(own?.name.startsWith(label), label).toBe(true)
      expect(own?.description).toBe(hint)
      expect(unsure?.name).toBe(`${ui['not-sure']}: ${label}`)
      expect(more).toEqual([])
    }
    expect(boxes).toHaveLength(2 * Object.keys(signs).length)
  })

  test('which answer was given before, on a card to press', async () => {
    const { page } = await visit()
    await play(page, healthy)
    await page.locator('button.bead[data-observation="surface-texture"]').click()
    await page.locator('.card').first().waitFor()
    const pressed = ofRole(await spokenOn(page), 'button').filter(
      ({ states }) => states.pressed === 'true'
    )

    expect(pressed).toHaveLength(1)
    expect(pressed[0]?.name).toContain(observations['surface-texture'].answers['wet-islands'].label)
  })

  test('what is wrong with a number, together with its field', async () => {
    const { page } = await visit()
    await begin(page)
    await playOn(page, healthy, 'jar-ph')
    expect(ofRole(await spokenOn(page), 'textbox')[0]).toMatchObject({ description: '' })
    await page.locator('#measure-jar-ph').fill('sour')
    await page.locator('[type="submit"]').click()
    await page.locator('.error').waitFor()

    const [field] = ofRole(await spokenOn(page), 'textbox')
    expect(field).toMatchObject({
      name: ui.prompts['number-ph'],
      description: ui.errors['not-a-number-ph'],
      states: { invalid: 'true', focused: true }
    })
  })

  test('that a link was copied, without moving the focus', async () => {
    const { page } = await visit({ permissions: ['clipboard-read', 'clipboard-write'] })
    await play(page, healthy)
    await page.locator('[data-action="copy-link"]').click()
    await page.getByText(ui['copied-link']).waitFor()

    const spoken = await spokenOn(page)
    expect(ofRole(spoken, 'status').map(({ states }) => states.live)).toEqual(['polite'])
    const focused = spoken.find(({ role, states }) => states.focused && role !== 'RootWebArea')
    expect(focused?.name).toBe(ui['copy-link'])
  })

  test('an emergency: its heading, two numbers and the way back, no more', async () => {
    const { page } = await visit()
    await play(page, JARS.emergency ?? {})
    await page.locator('h1:focus').waitFor()
    const spoken = await spokenOn(page)

    expect(ofRole(spoken, 'heading').map(({ name }) => name)).toEqual(['Call 911 now.'])
    expect(ofRole(spoken, 'link').map(({ name }) => name)).toEqual(['911', '1-800-222-1222'])
    expect(ofRole(spoken, 'button').map(({ name }) => name)).toEqual([ui['take-back']])
    const pressable = ['checkbox', 'radio', 'textbox', 'DisclosureTriangle', 'combobox']
    expect(spoken.filter(({ role }) => pressable.includes(role))).toEqual([])
  })

  test('one main region, one heading of the first rank, on every screen', async () => {
    const { page } = await visit()
    await play(page, healthy, async () => {
      const spoken = await spokenOn(page)
      expect(ofRole(spoken, 'main')).toHaveLength(1)
      const first = ofRole(spoken, 'heading').filter(({ states }) => states.level === 1)
      expect(first).toHaveLength(1)
      expect(spoken.filter(({ role, name }) => role === 'button' && name === '')).toEqual([])
    })
  })
})
