import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, test } from 'vitest'
import kombucha from '../../locales/en/kombucha-jar.json' with { type: 'json' }
import { JARS, type Jar } from '../helpers/jars.mjs'
import { axeFaults } from './axe.ts'
import { play, verdictsOn } from './play.ts'
import { SAID } from './said.ts'
import { useVisits } from './visit.ts'

/** What one walk through a jar showed, screen by screen. */
interface Seen {
  readonly verdicts: readonly (string | null)[]
  readonly use: readonly string[]
  readonly faults: readonly string[]
  readonly titles: readonly string[]
  readonly headings: readonly (string | null)[]
}

async function walkOf(page: Page, jar: Jar): Promise<Seen> {
  const faults: string[] = []
  const titles = [await page.title()]
  const headings: (string | null)[] = []
  await play(page, jar, async screen => {
    const heading = page.locator('h1:focus')
    await heading.waitFor()
    headings.push(await heading.textContent())
    titles.push(await page.title())
    faults.push(...(await axeFaults(page)).map(fault => `${screen ?? 'outcome'}: ${fault}`))
  })
  const use = await page.locator('.outcome .use').allTextContents()
  return { verdicts: await verdictsOn(page), use, faults, titles, headings }
}

test('every jar has its outcome written down, and no other', () => {
  expect(Object.keys(SAID).sort()).toEqual(Object.keys(JARS).sort())
})

describe('in the browser the jar', () => {
  const visit = useVisits()

  describe.each(Object.entries(SAID))('%s', (name, { first, also = [], use }) => {
    let seen: Seen
    beforeAll(async () => {
      const { page } = await visit()
      seen = await walkOf(page, JARS[name] ?? {})
    })

    test('comes to what a specialist would say, cards in order', () => {
      expect(seen.verdicts).toEqual([first, ...also])
      expect(seen.use).toEqual(use === null ? [] : [kombucha.use[use]])
    })

    test('passes only screens that axe faults nothing on', () => {
      expect(seen.faults).toEqual([])
    })

    test('gives every screen the focus on its heading and a title of its own', () => {
      expect(new Set(seen.titles).size).toBe(seen.titles.length)
      // The first title is that of the screen before the walk, the last that of the outcome.
      const told = seen.titles
        .slice(1, -1)
        .map((title, at) => title.startsWith(`${seen.headings[at]} · `))
      expect(told).not.toContain(false)
    })
  })
})
