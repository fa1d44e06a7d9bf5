import type { Locator, Page } from 'playwright-core'
import { beforeAll, describe, expect, test } from 'vitest'
import { JARS } from '../helpers/jars.mjs'
import { axeFaults } from './axe.ts'
import { cutOff, smallTargets, spilling } from './layout.ts'
import { begin, play, playOn } from './play.ts'
import { useVisits } from './visit.ts'

const jar = { ...JARS['merging-islands'], 'jar-ph': ['3.4', 'narrow-strip'] }
const SCREENS = ['people-signs', 'surface-texture', 'jar-ph', null]
const WIDTHS = [320, 360, 768, 1280, 1920]

/** Shows the four screens, the strip and every fold open, one after the other. */
async function eachScreen(page: Page, each: (screen: string) => Promise<unknown>) {
  await begin(page)
  for (const screen of SCREENS) {
    await playOn(page, jar, screen)
    if (screen === 'jar-ph') await page.locator('input[value="wide-strip"]').check()
    await page.locator('details').evaluateAll(folds => {
      for (const fold of folds) fold.setAttribute('open', '')
    })
    await each(screen ?? 'outcome')
  }
}

/** Shows what those pass by: the first screen, answers without a picture, an emergency. */
async function eachOtherScreen(page: Page, each: (screen: string) => Promise<unknown>) {
  await each('choose')
  await begin(page)
  await playOn(page, { ...jar, 'jar-ph': 'unsure' }, 'starter-kind')
  await each('starter-kind')
  await page.locator('button.bead[data-observation="people-signs"]').click()
  await page.locator('[data-sign="severe-symptoms"]').check()
  await page.locator('[data-answer="none"]').click()
  await page.locator('.emergency').waitFor()
  await each('emergency')
}

/** Text set by its reader (WCAG 1.4.12) and text at twice its size (WCAG 1.4.4). */
const SPACED = `* { line-height: 1.5 !important; letter-spacing: 0.12em !important;
  word-spacing: 0.16em !important } p { margin-bottom: 2em !important }`
const DOUBLE = 'html { font-size: 225% !important }'

const MANNERS = { plain: '/* as it comes */', double: DOUBLE, spaced: SPACED }
type Manner = keyof typeof MANNERS

/** What does not fit, by how the text is set, each as its screen, its width and its text. */
type Faults = Readonly<Partial<Record<Manner, string[]>>>

/** Looks at the screens of one walk at every width, with the text set in one manner after the other. */
async function faultsAtWidths(
  page: Page,
  screens: typeof eachScreen,
  manners: readonly Manner[],
  beside: (screen: string) => Promise<unknown> = async () => undefined
): Promise<Faults> {
  const faults = Object.fromEntries(manners.map(manner => [manner, [] as string[]]))
  await screens(page, async screen => {
    for (const manner of manners) {
      const style = await page.addStyleTag({ content: MANNERS[manner] })
      for (const width of WIDTHS) {
        await page.setViewportSize({ width, height: 800 })
        const found = [...(await spilling(page)), ...(await cutOff(page))]
        faults[manner]?.push(...found.map(fault => `${screen} at ${width}: ${fault}`))
      }
      await style.evaluate(tag => tag.parentNode?.removeChild(tag))
    }
    await beside(screen)
    await page.setViewportSize({ width: 1280, height: 800 })
  })
  return faults
}

/** On how many lines an element's words stand. */
const linesOf = (words: Locator) =>
  words.evaluate(element => {
    const range = document.createRange()
    range.selectNodeContents(element)
    return new Set([...range.getClientRects()].map(({ top }) => top)).size
  })

describe('every screen fits', () => {
  const visit = useVisits()

  const small: Record<number, string[]> = { 320: [], 1280: [] }
  let walked: Faults
  let passedBy: Faults
  let inSpanish: Faults
  beforeAll(async () => {
    const open = async (hash = '') => (await visit({ bypassCSP: true }, { hash })).page
    const page = await open()
    walked = await faultsAtWidths(page, eachScreen, ['plain', 'double', 'spaced'], async screen => {
      for (const [width, found] of Object.entries(small)) {
        await page.setViewportSize({ width: Number(width), height: 800 })
        found.push(...(await smallTargets(page)).map(target => `${screen}: ${target}`))
      }
    })
    passedBy = await faultsAtWidths(await open(), eachOtherScreen, ['plain', 'double', 'spaced'])
    inSpanish = await faultsAtWidths(await open('#/es/'), eachScreen, ['double'])
  })

  test('at widths from a small phone to a wide desk', () => {
    expect(walked.plain).toEqual([])
  })

  test('at those widths on the first screen, without pictures, in an emergency', () => {
    expect(passedBy.plain).toEqual([])
  })

  test('with its text at twice its size', () => {
    expect(walked.double).toEqual([])
  })

  test('with its text at twice its size, in Spanish', () => {
    expect(inSpanish.double).toEqual([])
  })

  test('with its text at twice its size, first screen to emergency', () => {
    expect(passedBy.double).toEqual([])
  })

  test('with its text spaced as its reader likes', () => {
    expect(walked.spaced).toEqual([])
  })

  test('with its text spaced so, first screen to emergency', () => {
    expect(passedBy.spaced).toEqual([])
  })

  test('in one piece: no word of an emergency breaks at twice its size', async () => {
    const { page } = await visit({ bypassCSP: true, viewport: { width: 320, height: 800 } })
    await page.addStyleTag({ content: DOUBLE })
    await play(page, JARS.emergency ?? {})

    for (const words of ['.signal', '.emergency-number bdi']) {
      const word = page.locator(`.emergency ${words}`)
      expect(await linesOf(word), words).toBe(1)
    }
  })

  test.each([640, 800])('an emergency at once, heading and number, at height %i', async height => {
    const { page } = await visit({ viewport: { width: 360, height } })
    await play(page, JARS.emergency ?? {})
    await page.locator('h1:focus').waitFor()

    for (const part of ['.signal', 'h1', '.emergency-number .phone']) {
      const box = await page.locator(`.emergency ${part}`).boundingBox()
      expect(box?.y, part).toBeGreaterThanOrEqual(0)
      expect((box?.y ?? 0) + (box?.height ?? 0), part).toBeLessThanOrEqual(height)
    }
  })

  test.each([320, 1280])('under a finger: no target under 24 pixels at width %i', width => {
    expect(small[width]).toEqual([])
  })
})

describe('the page heeds what its reader asked the system for', () => {
  const visit = useVisits()
  const animated = (page: Page) =>
    page
      .locator('*')
      .evaluateAll(all => all.map(one => getComputedStyle(one).animationName))
      .then(names => names.filter(name => name !== 'none'))

  test('less motion: nothing moves', async () => {
    const calm = await visit({ reducedMotion: 'reduce' })
    await play(calm.page, jar)
    expect(await animated(calm.page)).toEqual([])

    await calm.page.emulateMedia({ reducedMotion: 'no-preference' })
    expect((await animated(calm.page)).length).toBeGreaterThan(0)
  })

  test('Spanish: axe faults nothing', async () => {
    const { page } = await visit({}, { hash: '#/es/' })
    const faults: string[] = []
    await eachScreen(page, async screen => {
      faults.push(...(await axeFaults(page)).map(fault => `${screen}: ${fault}`))
    })
    expect(faults).toEqual([])
  })

  test('dark: axe faults nothing, and the paper is dark', async () => {
    const { page } = await visit({ colorScheme: 'dark' })
    const faults: string[] = []
    await eachScreen(page, async screen => {
      faults.push(...(await axeFaults(page, 'dark')).map(fault => `${screen}: ${fault}`))
    })
    expect(faults).toEqual([])
    const paper = await page.evaluate(
      () => getComputedStyle(document.documentElement).backgroundColor
    )
    expect(paper).toBe('rgb(35, 31, 26)')
  })

  test('forced colors: what was chosen is told by a line, not a shade', async () => {
    const { page } = await visit({ forcedColors: 'active' })
    await play(page, jar)
    await page.locator('button.bead[data-observation="surface-texture"]').click()
    const told = page.locator('.card[aria-pressed="true"]')
    await told.waitFor()
    const line = (selector: string) =>
      page
        .locator(selector)
        .first()
        .evaluate(one => {
          const { borderWidth, outlineStyle, outlineWidth } = getComputedStyle(one)
          return outlineStyle === 'none' ? borderWidth : outlineWidth
        })

    expect(await line('.card[aria-pressed="true"]')).not.toBe(
      await line('.card[aria-pressed="false"]')
    )
    expect(await line('.bead[aria-current] .bead-mouth')).not.toBe(
      await line('.bead:not([aria-current]) .bead-mouth')
    )
  })
})
