import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import office from '../../public/office.json' with { type: 'json' }
import { JARS } from '../helpers/jars.mjs'
import { atDesk, callOn } from './desk-call.ts'
import { useEmbeds } from './embed-visit.ts'
import { cutOff, spilling } from './layout.ts'
import { openList, playOn } from './play.ts'
import { accentedEnglish, LEFT_ALONE, speakPseudo, turnedEnglish } from './pseudo-words.ts'
import { useVisits } from './visit.ts'

const WIDTHS = [320, 390]
const ACCENTED = accentedEnglish()
const jar = JARS['white-fuzz'] ?? {}

/** Letters that may stand in English whatever the language, and why. */
const ALLOWED: readonly (readonly [words: string, why: string])[] = [
  ['Jarside', 'the name of the program'],
  ['pH', 'a symbol'],
  ['Español English Tiếng Việt', 'what languages are called in their own words'],
  [JSON.stringify(office), 'what the office wrote in its pack'],
  [LEFT_ALONE.join(' '), 'one small word, which a name in the code may be as well']
]
const allowed = new Set(ALLOWED.flatMap(([words]) => words.match(/\p{L}+/gu) ?? []))

/** Plain letters that can be seen, without those that are allowed. */
async function leftInEnglish(page: Page): Promise<readonly string[]> {
  const runs = await page.evaluate(() => {
    const roots: ParentNode[] = [document.body]
    for (const host of document.querySelectorAll('jarside-walk')) {
      if (host.shadowRoot) roots.splice(0, roots.length, host.shadowRoot)
    }
    return roots.flatMap(root => {
      const found: string[] = []
      const texts = document.createTreeWalker(root, NodeFilter.SHOW_TEXT)
      while (texts.nextNode()) {
        const parent = texts.currentNode.parentElement
        if (!parent?.checkVisibility() || parent.closest('svg, style, script, .key, kbd')) continue
        found.push(...(texts.currentNode.textContent?.match(/\p{L}+/gu) ?? []))
      }
      return found
    })
  })
  return [...new Set(runs)].filter(run => /^[A-Za-z]{2,}$/.test(run) && !allowed.has(run))
}

/** What does not fit at each width. */
async function faultsOf(page: Page, screen: string, widths = WIDTHS): Promise<readonly string[]> {
  const faults: string[] = []
  for (const width of widths) {
    await page.setViewportSize({ width, height: 800 })
    const found = [...(await spilling(page)), ...(await cutOff(page))]
    faults.push(...found.map(fault => `${screen} at ${width}: ${fault}`))
  }
  return faults
}

const OPTIONS = { serviceWorkers: 'block', viewport: { width: 390, height: 800 } } as const

describe('with every text accented and 40 % longer', () => {
  const visit = useVisits()
  const open = (hash: string, shows: string, swap = ACCENTED) =>
    visit(OPTIONS, { hash, shows, before: page => speakPseudo(page, swap) })

  /** The question, its list of signs, and the outcome. */
  async function walked(page: Page, look: (screen: string) => Promise<unknown>) {
    await look('question')
    await openList(page)
    await look('signs')
    await playOn(page, jar)
    await look('outcome')
  }

  test('the page fits and says nothing in plain English', async () => {
    const { page } = await open('#/en/kombucha-jar', '.question')
    const [faults, english]: [string[], string[]] = [[], []]
    expect(await page.locator('h1').textContent()).toMatch(/^⟦.*⟧/)
    await walked(page, async screen => {
      faults.push(...(await faultsOf(page, screen)))
      english.push(...(await leftInEnglish(page)).map(word => `${screen}: ${word}`))
    })
    expect(faults).toEqual([])
    expect(english).toEqual([])
  })

  test('the page fits written from the right', async () => {
    const { page } = await open('#/ar/kombucha-jar', '.question', turnedEnglish())
    expect(await page.locator('h1').textContent()).toContain('\u202e')
    const faults: string[] = []
    await walked(page, async screen => faults.push(...(await faultsOf(page, screen))))
    expect(faults).toEqual([])
  })

  test('the kiosk and the desk fit and say nothing in plain English', async () => {
    const { page: kiosk, faults: said } = await open('kiosk.html', '.start [data-language="en"]')
    await kiosk.locator('.start [data-language="en"]').click()
    await kiosk.locator('[data-tree="kombucha-jar"]').waitFor()
    // No kiosk is as narrow as a small phone; its type is larger.
    const faults = [...(await faultsOf(kiosk, 'kiosk', [390, 1080]))]
    // Its copy on the device would keep the made words.
    said.splice(0, said.length, ...said.filter(line => !line.startsWith('Service Worker')))
    const english = [...(await leftInEnglish(kiosk))]
    const { page: desk } = await open('desk.html', '.desk .question')
    await atDesk(desk)
    faults.push(...(await faultsOf(desk, 'desk')))
    english.push(...(await leftInEnglish(desk)))
    await callOn(desk, jar)
    faults.push(...(await faultsOf(desk, 'desk outcome')))
    english.push(...(await leftInEnglish(desk)))
    expect(faults).toEqual([])
    expect(english).toEqual([])
  })
})

describe('in somebody else’s page', () => {
  const open = useEmbeds()

  test('the embed says nothing in plain English', async () => {
    const { page } = await open('/county', {
      ...OPTIONS,
      before: page => speakPseudo(page, ACCENTED)
    })
    await page.locator('jarside-walk .question').waitFor()
    const heading = page.locator('jarside-walk .step-heading').first()
    expect(await heading.textContent()).toMatch(/⟦/)
    expect(await leftInEnglish(page)).toEqual([])
    await page.setViewportSize({ width: 320, height: 800 })
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true)
  })
})
