import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { BadInput } from '../../src/science/bad-input.ts'
import {
  mix,
  mixPh,
  STARTER_KINDS,
  shareNeeded,
  shareOf,
  shareOfWhole,
  starterReading
} from '../../src/science/mix.ts'
import { exactly, plusMinus } from '../../src/science/span.ts'
import { acidAt, phWith } from '../../src/science/tea.ts'

const CENTRAL = { acetic: 0.75, buffer: { capacity: 2e-3, neutral: 5.6 } }
const starterPh = fc.double({ min: 2.4, max: 3.9, noNaN: true })
/** Starters with as much acid as published ones; what is stronger is not known to exist. */
const knownPh = fc.double({ min: 2.9, max: 3.6, noNaN: true })
const share = fc.double({ min: 0.02, max: 0.9, noNaN: true })

// Self-checks: worked out once by another program with the same equations; no outside evidence.
describe('the mix comes out as it was worked out before', () => {
  test.each([
    [2.8, 0.1, 3.7449],
    [3.0, 0.1, 4.0321],
    [3.0, 0.2, 3.6797],
    [3.2, 0.125, 4.1903],
    [3.5, 0.2, 4.3174]
  ])('starter %d, share %d: central pH %d', (ph, part, expected) => {
    expect(phWith(CENTRAL, acidAt(CENTRAL, ph) * part)).toBeCloseTo(expected, 3)
  })

  test.each([
    [plusMinus(3, 0.05), 0.0625, [3.8, 4.28, 5.17], 'not-known', 'not-known'],
    [plusMinus(3, 0.05), 0.1, [3.64, 4.03, 4.65], 'not-known', 'not-known'],
    [plusMinus(3, 0.05), 0.125, [3.57, 3.92, 4.43], 'yes', 'not-known'],
    [plusMinus(3, 0.05), 0.2, [3.41, 3.68, 4.03], 'yes', 'yes'],
    [plusMinus(3, 0.3), 0.2, [3.13, 3.68, 4.49], 'yes', 'not-known'],
    [{ low: 2.4, mid: 2.65, high: 2.9 }, 0.1, [3.02, 3.53, 4.32], 'yes', 'not-known'],
    [{ low: 2.4, mid: 2.65, high: 2.9 }, 0.15, [2.9, 3.35, 3.98], 'yes', 'yes'],
    [{ low: 2.9, mid: 3.2, high: 3.5 }, 0.1, [3.59, 4.31, 5.7], 'not-known', 'not-known'],
    [{ low: 2.9, mid: 3.2, high: 3.5 }, 0.25, [3.29, 3.83, 4.65], 'not-known', 'not-known']
  ] as const)('%o at a share of %d', (starter, part, [low, mid, high], at46, at42) => {
    const found = mix({ ph: starter }, part)
    expect(found.ph.low).toBeCloseTo(low, 2)
    expect(found.ph.mid).toBeCloseTo(mid, 2)
    expect(found.ph.high).toBeCloseTo(high, 2)
    expect([found.atMost46, found.atMost42]).toEqual([at46, at42])
  })

  test.each([
    [2.8, 4.6, [0.003, 0.02, 0.052]],
    [3.0, 4.6, [0.006, 0.035, 0.084]],
    [3.2, 4.6, [0.012, 0.058, 0.131]],
    [3.5, 4.6, [0.03, 0.118, 0.236]],
    [2.8, 4.2, [0.012, 0.042, 0.081]],
    [3.0, 4.2, [0.025, 0.073, 0.13]],
    [3.2, 4.2, [0.048, 0.123, 0.202]],
    [3.5, 4.2, [0.123, 0.249, 0.364]]
  ] as const)('a starter of %d needs a share to come to %d', (ph, limit, [low, mid, high]) => {
    const found = shareNeeded({ ph: exactly(ph) }, limit)
    expect(found.low).toBeCloseTo(low, 3)
    expect(found.mid).toBeCloseTo(mid, 3)
    expect(found.high).toBeCloseTo(high, 3)
  })
})

describe('a fresh mix', () => {
  test('is the more acid the more starter is in it', () => {
    fc.assert(
      fc.property(starterPh, share, (ph, part) => {
        const less = mixPh(plusMinus(ph, 0.1), part)
        const more = mixPh(plusMinus(ph, 0.1), Math.min(1, part * 1.1))
        expect(more.high).toBeLessThanOrEqual(less.high + 1e-9)
        expect(more.mid).toBeLessThanOrEqual(less.mid + 1e-9)
        expect(more.low).toBeLessThanOrEqual(less.low + 1e-9)
      })
    )
  })

  test('is never more acid for a weaker starter', () => {
    fc.assert(
      fc.property(starterPh, share, (ph, part) => {
        const central = (at: number) => phWith(CENTRAL, acidAt(CENTRAL, at) * part)
        expect(central(ph + 0.1)).toBeGreaterThanOrEqual(central(ph) - 1e-9)
      })
    )
  })

  test('of starter alone is the starter again', () => {
    fc.assert(
      fc.property(starterPh, ph => {
        expect(mixPh(exactly(ph), 1).mid).toBeCloseTo(ph, 6)
      })
    )
  })

  test('of next to no starter is the tea', () => {
    expect(mixPh(exactly(3), 1e-9).mid).toBeCloseTo(5.6, 3)
  })

  test('lies in order, and a wider reading never narrows it', () => {
    fc.assert(
      fc.property(knownPh, share, (ph, part) => {
        const narrow = mixPh(plusMinus(ph, 0.05), part)
        const wide = mixPh(plusMinus(ph, 0.5), part)
        expect(narrow.low).toBeLessThanOrEqual(narrow.mid)
        expect(narrow.mid).toBeLessThanOrEqual(narrow.high)
        expect(wide.low).toBeLessThanOrEqual(narrow.low + 1e-9)
        expect(wide.high).toBeGreaterThanOrEqual(narrow.high - 1e-9)
      })
    )
  })

  // 21 CFR 114.3 (4.6); Niagara Region Public Health and Nummer 2013 (4.2).
  test('that straddles a limit is not known, and never a pass', () => {
    const found = mix({ ph: plusMinus(3, 0.05) }, 0.1)
    expect(found.ph.low).toBeLessThan(4.6)
    expect(found.ph.high).toBeGreaterThan(4.6)
    expect(found.atMost46).toBe('not-known')
  })

  test('of a starter of unknown kind passes no limit at a quarter or less', () => {
    for (const part of [0.05, 0.1, 0.15, 0.2, 0.25]) {
      const { atMost46, atMost42 } = mix({ kind: 'unknown' }, part)
      expect([atMost46, atMost42]).toEqual(['not-known', 'not-known'])
    }
  })

  test('of a starter as weak as tea is not known', () => {
    expect(mix({ ph: plusMinus(6.5, 0.05) }, 0.1).atMost46).not.toBe('yes')
  })

  test('starters are the less sure the less is known of them', () => {
    const width = ({ low, high }: { low: number; high: number }) => high - low
    expect(width(STARTER_KINDS['two-weeks-or-more'])).toBeLessThan(
      width(STARTER_KINDS['one-to-two-weeks'])
    )
    expect(width(STARTER_KINDS['one-to-two-weeks'])).toBeLessThan(width(STARTER_KINDS.unknown))
  })
})

describe('what cannot be is told with the numbers that can', () => {
  test.each([
    ['pH 15', () => starterReading(15, 'meter')],
    ['a pH that is no number', () => starterReading(Number.NaN)],
    ['more starter than batch', () => shareOf(17, 16)],
    ['a negative starter', () => shareOf(-1, 16)],
    ['no batch', () => shareOf(1, 0)],
    ['a share over 1', () => mix({ kind: 'unknown' }, 1.2)],
    ['a limit of pH 9', () => shareNeeded({ kind: 'unknown' }, 9)]
  ])('%s', (_, wrong) => {
    expect(wrong).toThrow(BadInput)
    expect(wrong).toThrow(/it has to be from/)
  })
})

// Worked example: 1 cup in a gallon is 6.25 %, 2 cups 12.5 %, 400 mL in 4 L 10 %.
test('a share is of the whole', () => {
  expect(shareOf(1, 16)).toBe(0.0625)
  expect(shareOf(400, 4000)).toBe(0.1)
  expect(shareOfWhole(1 / 15)).toBeCloseTo(1 / 16, 12)
})
