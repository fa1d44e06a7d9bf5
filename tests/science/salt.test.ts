import { describe, expect, test } from 'vitest'
import { BadInput } from '../../src/science/bad-input.ts'
import {
  brineStrength,
  krautBand,
  type SaltKind,
  saltShare,
  saltWeight,
  TABLESPOON,
  weighedSalt
} from '../../src/science/salt.ts'
import { exactly } from '../../src/science/span.ts'
import { amount, sum } from '../../src/science/units.ts'

const BRINE = amount(8.25, 'cup')

describe('salt by weight', () => {
  // USDA Complete Guide to Home Canning: 3 tablespoons of canning salt to 5 pounds of cabbage, about 2.4 %.
  test('of the published sauerkraut recipe is in range', () => {
    const share = saltShare(saltWeight(amount(3, 'tbsp'), 'canning'), amount(5, 'lb'))
    expect(share.mid).toBeCloseTo(2.4, 1)
    expect(krautBand(share)).toBe('in-range')
  })

  // USDA, large batch: ¾ cup to 25 pounds, 1.9 %: not low.
  test('of the published large batch is not called low', () => {
    const share = saltShare(saltWeight(amount(0.75, 'cup'), 'canning'), amount(25, 'lb'))
    expect(share.mid).toBeCloseTo(1.9, 1)
    expect(krautBand(share)).not.toBe('low')
  })

  // USDA dill pickles: ½ cup of salt, 8 cups of water, ¼ cup of vinegar, 4 pounds: about 7 %, evens out near 3.7 %.
  test('of the published dill brine is about seven percent', () => {
    const salt = saltWeight(amount(0.5, 'cup'), 'canning')
    const liquid = sum(amount(8, 'cup'), amount(0.25, 'cup'))
    expect(brineStrength(salt, liquid).mid).toBeCloseTo(6.9, 1)
    const evened = sum(liquid, amount(1814.4, 'mL'))
    expect(brineStrength(salt, evened).mid).toBeCloseTo(3.7, 1)
  })

  test('by spoons of an unknown kind spans every kind', () => {
    for (const kind of Object.keys(TABLESPOON) as SaltKind[]) {
      expect(TABLESPOON[kind].low).toBeGreaterThanOrEqual(TABLESPOON.unknown.low)
      expect(TABLESPOON[kind].high).toBeLessThanOrEqual(TABLESPOON.unknown.high)
    }
    const share = saltShare(saltWeight(amount(3, 'tbsp'), 'unknown'), amount(5, 'lb'))
    expect(krautBand(share)).toBe('not-known')
  })
})

// Oregon State SP 50-745 (1.7 and less is soft); Satora 2020 (over 3 favors pink yeast).
describe('a band of sauerkraut', () => {
  test.each([
    [1.69, 'low'],
    [1.7, 'borderline'],
    [2, 'borderline'],
    [2.01, 'in-range'],
    [3, 'in-range'],
    [3.01, 'high']
  ] as const)('at exactly %d % is %s', (percent, band) => {
    expect(krautBand(exactly(percent))).toBe(band)
  })
  test('that an interval straddles is not known', () => {
    expect(krautBand({ low: 1.6, mid: 1.8, high: 1.9 })).toBe('not-known')
    expect(krautBand({ low: 2.5, mid: 2.9, high: 3.1 })).toBe('not-known')
  })
})

test.each([
  ['negative salt', () => weighedSalt(amount(-1, 'g'))],
  ['no vegetables', () => saltShare(exactly(10), amount(0, 'g'))],
  ['more salt than vegetables', () => saltShare(exactly(500), amount(400, 'g'))],
  ['salt that begins below zero', () => saltShare({ low: -5, mid: 3, high: 4 }, amount(1, 'kg'))],
  ['ends the wrong way round', () => saltShare({ low: 40, mid: 30, high: 10 }, amount(1, 'kg'))],
  ['a middle that is no number', () => brineStrength({ ...exactly(9), mid: Number.NaN }, BRINE)],
  ['more salt than brine', () => brineStrength(exactly(1e6), BRINE)],
  ['spoons that are no number', () => saltWeight(amount(Number.NaN, 'tbsp'), 'canning')]
])('%s is an error that names the span', (_, wrong) => {
  expect(wrong).toThrow(BadInput)
})
