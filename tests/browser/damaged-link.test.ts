import { describe, expect, test } from 'vitest'
import ui from '../../locales/en/ui.json' with { type: 'json' }
import { shippedTrees } from '../helpers/shipped.ts'
import { answer, askedOn, TREE, verdictsOn } from './play.ts'
import { useVisits } from './visit.ts'

const [tree] = await shippedTrees()
const print = `f=${tree?.fingerprint.slice(0, 12)}`
const JAR = 'container-signs=none&jar-signs=none'
const [damaged, other] = [ui['link-damaged'], ui['link-other-edition']]

/** A link's query, the sentence that must stand over the first question, and what is asked after people. */
const LINKS: readonly [name: string, query: string, notice: string, next: string][] = [
  ['an unknown answer', `${print}&${JAR}&surface-texture=plaid`, damaged, 'surface-texture'],
  ['an unknown sign', `${print}&container-signs=none~ghost.yes`, damaged, 'container-signs'],
  ['an unknown value of a sign', `${print}&${JAR}~late-acid.maybe`, damaged, 'jar-signs'],
  ['a sign named __proto__', `${print}&${JAR}~__proto__.yes`, damaged, 'jar-signs'],
  ['an observation named __proto__', `${print}&__proto__=none&${JAR}`, damaged, 'surface-texture'],
  ['an observation named constructor', `${print}&constructor=none`, damaged, 'container-signs'],
  ['an instrument named toString', `${print}&jar-ph=3.2@toString`, damaged, 'container-signs'],
  ['an answer about people', `${print}&people-signs=none&${JAR}`, damaged, 'surface-texture'],
  ['one observation told twice', `${print}&${JAR}&jar-signs=none`, damaged, 'surface-texture'],
  ['a broken escape', `${print}&${JAR}&%E0%A4%A=none`, damaged, 'surface-texture'],
  ['a number out of bounds', `${print}&jar-ph=99`, damaged, 'container-signs'],
  ['a number written oddly', `${print}&jar-ph=1e0`, damaged, 'container-signs'],
  ['days in parts', `${print}&day=3.5`, damaged, 'container-signs'],
  ['another fingerprint', `f=000000000000&${JAR}`, other, 'surface-texture'],
  ['no fingerprint', JAR, other, 'surface-texture'],
  ['nothing but a mark', '', other, 'container-signs'],
  ['markup', `${print}&<img src=x onerror=alert(1)>=1`, damaged, 'container-signs'],
  ['100 kB of one word', `${print}&${'x'.repeat(100_000)}`, damaged, 'container-signs'],
  ['100 kB of answers', `${print}&${`${JAR}&`.repeat(2_600)}`, damaged, 'surface-texture']
]

/** Links that lost their end on the way: what stood last may have said more. */
const CUT: readonly [where: string, query: string, notice: string, next: string][] = [
  ['behind an answer', `${print}&container-signs=none&jar-signs=none`, damaged, 'jar-signs'],
  ['in its end', `${print}&${JAR}&surface-texture=wet-film&en`, damaged, 'spots-and-color'],
  ['in its fingerprint', print.slice(0, 9), other, 'container-signs']
]

describe('a damaged link', () => {
  const visit = useVisits()

  test.each(LINKS)(
    'with %s is said to be one, and decides nothing',
    async (_, query, notice, next) => {
      const { page } = await visit({}, { hash: `#/${TREE}?${query}&end` })
      await page.locator('.question').waitFor()

      expect(await page.locator('.notice').allTextContents()).toEqual([notice])
      expect(await verdictsOn(page)).toEqual([])
      expect(await askedOn(page)).toBe('people-signs')
      await answer(page, 'people-signs', 'none')
      await page.locator(`.question[data-observation="${next}"]`).waitFor()
    }
  )

  test.each(CUT)('cut short %s keeps nothing of its last part', async (_, query, notice, next) => {
    const { page } = await visit({}, { hash: `#/${TREE}?${query}` })
    await page.locator('.question').waitFor()

    expect(await page.locator('.notice').allTextContents()).toEqual([notice])
    await answer(page, 'people-signs', 'none')
    await page.locator(`.question[data-observation="${next}"]`).waitFor()
  })

  test.each(['no-such-tree', '__proto__', 'constructor', 'toString?f=1', '%'])(
    'to the tree %s leads to the first screen with a sentence',
    async name => {
      const { page } = await visit({}, { hash: `#/${name}` })

      await page.locator('.choose').waitFor()
      expect(await page.locator('.notice').textContent()).toBe(ui['no-such-tree'])
    }
  )

  test.each(['more', 'likely-mold+normal-growth', '__proto__'])(
    'to the outcome %s leads to the first question with a sentence',
    async name => {
      const { page } = await visit({}, { hash: `#/${TREE}/${name}` })
      await page.locator('.question').waitFor()
      expect(await page.locator('.notice').textContent()).toBe(ui['no-such-outcome'])
    }
  )
})
