import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import ui from '../../locales/en/ui.json' with { type: 'json' }
import { JARS } from '../helpers/jars.mjs'
import { answer, askedOn, play, TREE, verdictsOn } from './play.ts'
import { address, useVisits } from './visit.ts'

const healthy = JARS['merging-islands'] ?? {}
const PEOPLE = [
  'illness-signs',
  'someone-drank',
  'at-risk-will-drink',
  'people-signs',
  'drinkers',
  'doctor'
]

/** Presses "copy a link" and gives what the clipboard then holds. */
async function copiedLink(page: Page): Promise<string> {
  await page.locator('[data-action="copy-link"]').click()
  await page.getByText(ui['copied-link']).waitFor()
  return page.evaluate(() => navigator.clipboard.readText())
}

/** Everything a page could leave behind or hand on. */
const leftBehind = (page: Page) =>
  page.evaluate(async () => ({
    stored: [localStorage, sessionStorage].flatMap(storage => Object.entries(storage)),
    databases: await indexedDB.databases(),
    caches: await caches.keys(),
    cookie: document.cookie,
    state: history.state,
    name: window.name,
    address: location.href
  }))

describe('a copied link', () => {
  const visit = useVisits()
  const permissions = ['clipboard-read', 'clipboard-write']

  test('brings the jar to another page, and people are asked about anew', async () => {
    const { page } = await visit({ permissions })
    await play(page, { ...healthy, drinkers: ['someone-drank'] })
    const link = await copiedLink(page)
    expect(link.startsWith(address())).toBe(true)

    const other = await visit({}, { hash: link.slice(address().length) })
    expect(await other.page.locator('.notice').textContent()).toBe(ui['link-whole'])
    expect(await askedOn(other.page)).toBe('people-signs')
    expect(await other.page.locator('input:checked').count()).toBe(0)
    await answer(other.page, 'people-signs', 'none')
    await other.page.locator('[data-observation="drinkers"]').waitFor()
    await answer(other.page, 'drinkers', 'none')
    await other.page.locator('.outcome').waitFor()
    expect(await verdictsOn(other.page)).toEqual(['normal-growth'])
    expect(await other.page.locator('.use').textContent()).toBe(
      await page.locator('.use').textContent()
    )
  })

  test('pasted into the open page starts a walk of its own', async () => {
    const { page } = await visit({ permissions })
    await play(page, { ...healthy, drinkers: ['someone-drank'] })
    const link = await copiedLink(page)
    await page.evaluate(hash => {
      location.hash = hash
    }, new URL(link).hash)

    await page.locator('.notice').waitFor()
    expect(await askedOn(page)).toBe('people-signs')
    expect(await page.locator('input:checked').count()).toBe(0)
  })

  test('and everything the page keeps holds nothing about people', async () => {
    const { page, context } = await visit({ permissions })
    const drinkers = ['someone-drank', 'at-risk-will-drink']
    await play(page, { ...healthy, 'people-signs': ['illness-signs'], drinkers })
    expect((await verdictsOn(page))[0]).toBe('doctor-today')
    const link = await copiedLink(page)

    for (const word of PEOPLE) expect(link).not.toContain(word)
    expect(await leftBehind(page)).toEqual({
      stored: [],
      databases: [],
      caches: [],
      cookie: '',
      state: null,
      name: '',
      address: `${address()}#/${TREE}`
    })
    expect(await context.cookies()).toEqual([])
  })

  test('shows the text to copy by hand where the clipboard refuses', async () => {
    const { page } = await visit()
    await page.evaluate(() => {
      navigator.clipboard.writeText = () => Promise.reject(new Error('refused'))
    })
    await play(page, healthy)
    await page.locator('[data-action="copy-link"]').click()
    await page.locator('.keep-it-done', { hasText: 'surface-texture=wet-islands' }).waitFor()
  })
})
