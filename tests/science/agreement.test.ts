import binomialTest from '@stdlib/stats-binomial-test'
import fc from 'fast-check'
import jStat from 'jstat'
import { ConfusionMatrix } from 'ml-confusion-matrix'
import { describe, expect, test } from 'vitest'
import { rates, wilson } from '../../src/science/agreement.ts'
import { BadInput } from '../../src/science/bad-input.ts'

const COUNTS = { truePositive: 231, falsePositive: 32, falseNegative: 27, trueNegative: 54 }
const counts = fc
  .record({
    of: fc.integer({ min: 1, max: 400 }),
    part: fc.double({ min: 0, max: 1, noNaN: true })
  })
  .map(({ of, part }) => ({ of, hits: Math.round(of * part) }))

describe('rates', () => {
  // Altman and Bland 1994, BMJ 308:1552: the liver scan.
  test('of the published liver scan come out', () => {
    const found = rates(COUNTS)
    expect(found.sensitivity?.value).toBeCloseTo(0.895, 3)
    expect(found.specificity?.value).toBeCloseTo(0.628, 3)
    expect(found.positivePredictive?.value).toBeCloseTo(0.878, 3)
    expect(found.negativePredictive?.value).toBeCloseTo(0.667, 3)
    expect(found.n).toBe(344)
  })

  // Library ml-confusion-matrix 2.0.0.
  test('agree with a library of confusion matrices', () => {
    const theirs = new ConfusionMatrix(
      [
        [231, 27],
        [32, 54]
      ],
      ['yes', 'no']
    )
    const found = rates(COUNTS)
    expect(found.sensitivity?.value).toBeCloseTo(theirs.getTruePositiveRate('yes'), 12)
    expect(found.specificity?.value).toBeCloseTo(theirs.getTrueNegativeRate('yes'), 12)
    expect(found.positivePredictive?.value).toBeCloseTo(
      theirs.getPositivePredictiveValue('yes'),
      12
    )
    expect(found.negativePredictive?.value).toBeCloseTo(
      theirs.getNegativePredictiveValue('yes'),
      12
    )
  })

  test('of nobody are not told', () => {
    const found = rates({ truePositive: 0, falsePositive: 3, falseNegative: 0, trueNegative: 7 })
    expect(found.sensitivity).toBeNull()
    expect(found.specificity?.of).toBe(10)
  })
})

describe('a Wilson interval', () => {
  // Sogin and Worobo 2024, open data: 19 of 47 bought kombuchas held 0.5 % alcohol or more.
  test('of 19 in 47 is as worked out from the published data', () => {
    const { low, high } = wilson(19, 47)
    expect([low, high].map(one => Number(one.toFixed(3)))).toEqual([0.276, 0.547])
  })

  // 10 of 10 still leaves 0.7225: a perfect score of few is no proof.
  test('of ten out of ten begins at 0.7225', () => {
    const { low, high, of } = wilson(10, 10)
    expect(low).toBeCloseTo(0.7225, 4)
    expect([high, of]).toEqual([1, 10])
  })

  // Library jstat 1.9.6 for the normal point; @stdlib/stats-binomial-test 0.2.2 for the exact interval, which
  // is never much narrower.
  test('agrees with libraries', () => {
    expect(jStat.normal.inv(0.975, 0, 1)).toBeCloseTo(1.959963984540054, 6)
    fc.assert(
      fc.property(counts, ({ hits, of }) => {
        const { low, high, value } = wilson(hits, of)
        const exact = binomialTest(hits, of).ci as unknown as readonly [number, number]
        expect(low).toBeLessThanOrEqual(value)
        expect(high).toBeGreaterThanOrEqual(value)
        expect(low).toBeGreaterThanOrEqual(exact[0] - 0.03)
        expect(high).toBeLessThanOrEqual(exact[1] + 0.03)
      }),
      { numRuns: 60 }
    )
  })

  test('of 0 in 20 agrees with the published and the exact one', () => {
    expect(wilson(0, 20).high).toBeCloseTo(0.1611, 4)
    expect(jStat.beta.inv(0.975, 1, 20)).toBeCloseTo(0.1684, 4)
  })

  test.each([
    [3, 2],
    [-1, 5],
    [0, 0],
    [1.5, 3]
  ])('of %d in %d cannot be', (hits, of) => {
    expect(() => wilson(hits, of)).toThrow(BadInput)
  })
})
