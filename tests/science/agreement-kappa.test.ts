import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { kappa } from '../../src/science/agreement.ts'
import { BadInput } from '../../src/science/bad-input.ts'

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

  test.each(['none', 'linear', 'quadratic'] as const)(
    'by %s weights gives opposite ends nothing',
    by => {
      const opposite = [
        [0, 0, 5],
        [0, 0, 0],
        [5, 0, 0]
      ]
      expect(kappa(opposite, by).observed).toBe(0)
    }
  )

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
