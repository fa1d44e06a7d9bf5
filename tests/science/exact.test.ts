import binomialTest from '@stdlib/stats-binomial-test'
import fc from 'fast-check'
import jStat from 'jstat'
import { describe, expect, test } from 'vitest'
import { kappa, kappaSpan } from '../../src/science/agreement.ts'
import { BadInput } from '../../src/science/bad-input.ts'
import { exactRate } from '../../src/science/exact.ts'

const counts = fc
  .record({
    of: fc.integer({ min: 1, max: 400 }),
    part: fc.double({ min: 0, max: 1, noNaN: true })
  })
  .map(({ of, part }) => ({ of, hits: Math.round(of * part) }))

describe('an exact interval', () => {
  // Library @stdlib/stats-binomial-test 0.2.2.
  test('is the one that a library of statistics works out', () => {
    fc.assert(
      fc.property(counts, ({ hits, of }) => {
        const { low, high } = exactRate(hits, of)
        const [theirLow = NaN, theirHigh = NaN] = Array.from(binomialTest(hits, of).ci)
        expect(low).toBeCloseTo(theirLow, 8)
        expect(high).toBeCloseTo(theirHigh, 8)
      }),
      { numRuns: 60 }
    )
  })

  // Library jstat 1.9.6, by quantiles of the beta distribution.
  test('is the one that quantiles of the beta distribution give', () => {
    const { low, high } = exactRate(19, 47)
    expect(low).toBeCloseTo(jStat.beta.inv(0.025, 19, 29), 6)
    expect(high).toBeCloseTo(jStat.beta.inv(0.975, 20, 28), 6)
  })

  // Hanley and Lippman-Hand 1983, JAMA 249:1743, from memory: one-sided, none in 300 is at most 1 %. Two-sided it is a little more.
  test('of none in 300 ends a little above one in a hundred', () => {
    const { low, high } = exactRate(0, 300)
    expect(low).toBe(0)
    expect(high).toBeCloseTo(1 - 0.025 ** (1 / 300), 10)
  })

  test('of all begins as that of none ends', () => {
    expect(exactRate(12, 12)).toEqual({ value: 1, low: 1 - exactRate(0, 12).high, high: 1, of: 12 })
  })

  test.each([
    [3, 2],
    [-1, 5],
    [0, 0],
    [1.5, 3]
  ])('of %d in %d cannot be', (hits, of) => {
    expect(() => exactRate(hits, of)).toThrow(BadInput)
  })
})

describe('the interval of a kappa', () => {
  // The table of Fleiss 1981, whose kappa and error stand in agreement-kappa.test.ts: 0.6765 ± 1.96 × 0.0877.
  test('of a published table comes out', () => {
    const span = kappaSpan(
      kappa([
        [75, 1, 4],
        [5, 4, 1],
        [0, 0, 10]
      ])
    )
    expect(span?.low).toBeCloseTo(0.5046, 3)
    expect(span?.high).toBeCloseTo(0.8484, 3)
  })

  test('is cut off at 1, and none where there is no kappa', () => {
    const nearly = [
      [5, 1],
      [0, 5]
    ]
    expect(kappaSpan(kappa(nearly))?.high).toBe(1)
    const chance = [
      [9, 0],
      [0, 0]
    ]
    expect(kappaSpan(kappa(chance))).toBeNull()
  })
})
