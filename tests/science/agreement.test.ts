import binomialTest from '@stdlib/stats-binomial-test'
import fc from 'fast-check'
import jStat from 'jstat'
import { ConfusionMatrix } from 'ml-confusion-matrix'
import { describe, expect, test } from 'vitest'
import { kappa, rates, wilson } from '../../src/science/agreement.ts'
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

describe('kappa', () => {
  // R vcd 1.4-11: SexualFun, linear weights; Fleiss 1981 and Fleiss et al. 1969, values from memory, run there.
  test.each([
    [
      [
        [7, 7, 2, 3],
        [2, 8, 3, 7],
        [1, 5, 4, 9],
        [2, 8, 9, 14]
      ],
      'linear',
      0.2374,
      0.0783
    ],
    [
      [
        [75, 1, 4],
        [5, 4, 1],
        [0, 0, 10]
      ],
      'none',
      0.6765,
      0.0877
    ],
    [
      [
        [106, 10, 4],
        [22, 28, 10],
        [2, 12, 6]
      ],
      'none',
      0.4286,
      0.0537
    ]
  ] as const)('of a published table comes out: %o, %s', (table, weights, value, error) => {
    const found = kappa(table, weights)
    expect(found.kappa).toBeCloseTo(value, 4)
    expect(found.standardError).toBeCloseTo(error, 4)
  })

  // Textbook pair, from memory; statsmodels agrees: equal agreement, another kappa.
  test('differs where agreement does not', () => {
    const one = kappa([
      [45, 15],
      [25, 15]
    ])
    const other = kappa([
      [25, 35],
      [5, 35]
    ])
    expect(one.observed).toBe(other.observed)
    expect(one.kappa).toBeCloseTo(0.1304, 4)
    expect(other.kappa).toBeCloseTo(0.2593, 4)
  })

  test('is 1 for full agreement, and none where chance alone agrees always', () => {
    expect(
      kappa([
        [5, 0],
        [0, 5]
      ]).kappa
    ).toBe(1)
    expect(
      kappa([
        [9, 0],
        [0, 0]
      ])
    ).toMatchObject({ n: 9, kappa: null, standardError: null })
  })

  test('weighted for two categories is the plain one', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 4, maxLength: 4 }), n => {
        const [a = 1, b = 1, c = 1, d = 1] = n
        const table = [
          [a, b],
          [c, d]
        ]
        expect(kappa(table, 'quadratic').kappa).toBeCloseTo(kappa(table).kappa as number, 12)
        expect(kappa(table, 'linear').standardError).toBeCloseTo(
          kappa(table).standardError as number,
          12
        )
      })
    )
  })

  test.each([
    [
      'a table that is not square',
      [
        [1, 2, 3],
        [4, 5, 6]
      ]
    ],
    [
      'an empty table',
      [
        [0, 0],
        [0, 0]
      ]
    ],
    [
      'a half count',
      [
        [1.5, 0],
        [0, 2]
      ]
    ],
    ['one category', [[4]]]
  ])('is not worked out of %s', (_, table) => {
    expect(() => kappa(table)).toThrow(BadInput)
  })
})
