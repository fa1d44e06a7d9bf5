import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { afterNotes } from '../../src/evaluate/after.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'

// Amounts as a caller reads them, worked out again from published limits and exact units.
const tree = (await shippedTrees()).find(({ id }) => id === 'kombucha-jar') as Tree
const texts = (name: string) => JSON.parse(readFileSync(`locales/en/${name}.json`, 'utf8'))
const steps = texts('steps')
const jar = texts('kombucha-jar')

/** US customary volumes in milliliters, exact by definition: NIST Handbook 44, Appendix C (from memory). */
const TEASPOON = 4.92892159375
const CUP = 48 * TEASPOON
const GALLON = 16 * CUP

describe('the bleach rinse stays under the no-rinse line', () => {
  // 200 ppm available chlorine on food-contact surfaces without a rinse: 40 CFR 180.940 (a).
  const LINE = 200
  const ppm = (spoons: number, percent: number) => ((spoons * TEASPOON) / GALLON) * percent * 10_000
  const said =
    /2 teaspoons \(10 mL\) if the label says 5–7\.5%, or 1½ teaspoons \(7\.5 mL\) if it says 8\.25%/

  test('the step names the two amounts and the labels they are for', () => {
    expect(steps['sanitize-with-bleach']).toMatch(said)
    expect(steps['sanitize-with-bleach']).toContain('1 US gallon (3.8 L)')
  })

  test('each of them at each end of its label', () => {
    expect(ppm(2, 5)).toBeCloseTo(130, 0)
    expect(ppm(2, 7.5)).toBeCloseTo(195, 0)
    expect(ppm(1.5, 8.25)).toBeCloseTo(161, 0)
    for (const strength of [ppm(2, 5), ppm(2, 7.5), ppm(1.5, 8.25)])
      expect(strength).toBeLessThan(LINE)
  })

  test('the stronger label with the larger amount would be over it', () => {
    expect(ppm(2, 8.25)).toBeGreaterThan(LINE)
  })

  test('what bleach must never meet is said beside it', () => {
    expect(steps['bleach-caution']).toMatch(/Never mix it with vinegar or ammonia/)
    expect(steps['bleach-caution']).toMatch(/scented, splashless, gel or unlabeled/)
  })
})

describe('the share of starter', () => {
  const notes = (percent: number) =>
    afterNotes(tree, { 'starter-share': { low: percent, reading: percent, high: percent } })

  // At least 10 percent of the volume: Virginia Cooperative Extension FST-297P.
  test('is enough at ten percent and too little below', () => {
    expect(notes(10)).toEqual([])
    expect(notes(9.9)).toEqual(['too-little-starter'])
  })

  // Below 6 percent: common practice, no source.
  test('is far too little below six percent', () => {
    expect(notes(6)).toEqual(['too-little-starter'])
    expect(notes(5.9)).toEqual(['far-too-little-starter'])
  })

  test('is said in cups that come to at least as much', () => {
    expect(texts('notes')['too-little-starter']).toContain(
      'about 1⅔ cups (400 mL) to the gallon (3.8 L)'
    )
    expect((1 + 2 / 3) / 16).toBeGreaterThanOrEqual(0.1)
    expect(steps['first-batch-more-starter']).toContain(
      'one fifth be starter: about 3¼ cups (770 mL)'
    )
    expect(3.25 / 16).toBeGreaterThanOrEqual(0.2)
  })
})

describe('what a person may drink', () => {
  // At most 4 ounces a day: Niagara Region Public Health, Kombucha Best Practices.
  test('is four ounces a day, for healthy adults only', () => {
    expect(jar.cautions['how-much']).toMatch(
      /^Healthy adults only, up to 4 ounces \(120 mL\) a day\./
    )
    expect(steps['drink-a-little']).toMatch(/^Healthy adults only: .*4 ounces \(120 mL\)/)
    expect(4 * 6 * TEASPOON).toBeCloseTo(118.3, 1)
  })
})

describe('facts of the trade are said to be no more than that', () => {
  // common practice, no source
  test('tea, sugar and starter to the gallon', () => {
    expect(jar['rules-of-thumb'].amounts).toMatch(
      /^Common practice .*4–8 tea bags, 1 cup \(200 g\) of sugar and 1–2 cups .* of starter/
    )
  })

  // common practice, no source
  test('seven to fourteen days in a warm room', () => {
    expect(jar['rules-of-thumb'].time).toMatch(/^Common practice: 7–14 days/)
  })

  // common practice, no source
  test('a film from a store bottle: haze about day five, then white, then thick', () => {
    expect(jar['rules-of-thumb']['film-from-a-bottle']).toMatch(
      /^Common practice .*a haze about day 5, then a white film, then a thick one/
    )
  })
})

describe('words that this tool never says', () => {
  const all = ['steps', 'notes', 'verdicts', 'observations', 'ui', 'kombucha-jar'].flatMap(name =>
    sentences(texts(name)).map(text => [name, text] as const)
  )

  test.each(['safe', 'taste', 'tasting'])('no text says %s', word => {
    expect(all.filter(([, text]) => new RegExp(`\\b${word}`, 'i').test(text))).toEqual([])
  })

  test('nothing tells of deaths', () => {
    expect(
      all.filter(([, text]) => /\b(death|die[sd]?|fatal|deadly|mortality)\b/i.test(text))
    ).toEqual([])
  })
})

function sentences(texts: unknown): readonly string[] {
  if (typeof texts === 'string') return [texts]
  return Object.values(texts as Record<string, unknown>).flatMap(sentences)
}
