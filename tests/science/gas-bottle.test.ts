import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { BadInput } from '../../src/science/bad-input.ts'
import {
  BOTTLES,
  type BottleKind,
  type Sealed,
  sealedPressure,
  WHOLE_BATCH
} from '../../src/science/gas.ts'
import { volumesADay } from '../../src/science/gas-rate.ts'
import { exactly } from '../../src/science/span.ts'

const sealed = (more: Partial<Sealed> = {}): Sealed => ({
  sugar: exactly(15),
  days: 3,
  celsius: 25,
  headspace: 0.05,
  bottle: 'swing-top',
  ...more
})
const celsius = fc.double({ min: 0, max: 40, noNaN: true })
const room = fc.double({ min: 0.01, max: 1, noNaN: true })

describe('the pressure told of a bottle', () => {
  test.each([
    [1, 0.13, 0.53, 2.39],
    [3, 0.38, 1.59, 5.32],
    [7, 0.88, 3.7, 5.32]
  ])('after %d days at 25 °C with 15 g/L', (days, low, mid, high) => {
    const { now, ceiling } = sealedPressure(sealed({ days }))
    expect(now.low).toBeCloseTo(low, 2)
    expect(now.mid).toBeCloseTo(mid, 1)
    expect(now.high).toBeCloseTo(high, 2)
    expect(now.high).toBeLessThanOrEqual(ceiling.high)
  })

  test('is that of all the sugar while nobody knows the days', () => {
    const { now, ceiling } = sealedPressure(sealed({ days: null }))
    expect(now).toEqual(ceiling)
  })

  test('of sugar that nobody knows is that of the whole batch, and a hazard in every kind', () => {
    for (const bottle of Object.keys(BOTTLES) as BottleKind[]) {
      const found = sealedPressure(sealed({ sugar: WHOLE_BATCH, days: null, bottle }))
      expect(found.says).toBe('could-burst-now')
      expect(found.now.low).toBe(0)
    }
  })

  test('says one of two things, and names no day', () => {
    const kinds = Object.keys(BOTTLES) as BottleKind[]
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 120, noNaN: true }),
        fc.integer({ min: 0, max: 60 }),
        celsius,
        room,
        fc.constantFrom(...kinds),
        (sugar, days, warm, headspace, bottle) => {
          const found = sealedPressure({
            sugar: exactly(sugar),
            days,
            celsius: warm,
            headspace,
            bottle
          })
          const { now, limit, says } = found
          expect(now.low).toBeLessThanOrEqual(now.mid)
          expect(now.mid).toBeLessThanOrEqual(now.high)
          expect(says).toBe(now.high > limit ? 'could-burst-now' : 'not-shown-below')
          expect(Object.keys(found).sort()).toEqual(['ceiling', 'limit', 'now', 'says'])
        }
      )
    )
  })

  test('never falls with more days, sugar or warmth', () => {
    const later = (more: Partial<Sealed>) => sealedPressure(sealed(more)).now.high
    expect(later({ days: 4 })).toBeGreaterThanOrEqual(later({ days: 3 }))
    expect(later({ sugar: exactly(30) })).toBeGreaterThan(later({ sugar: exactly(15) }))
    for (let warm = 5; warm < 40; warm++) {
      const at = (degrees: number) => later({ celsius: degrees, days: 1 })
      expect(at(warm + 1)).toBeGreaterThan(at(warm))
    }
  })

  test.each([
    ['swing-top', 4],
    ['beer', 4],
    ['plastic', 5],
    ['sparkling', 6],
    ['square', 2],
    ['canning-jar', 2],
    ['wine', 2],
    ['unknown', 2]
  ] as const)('of a %s bottle is a hazard above %d bar by its high end alone', (bottle, limit) => {
    const withSugar = (sugar: number) =>
      sealedPressure(sealed({ bottle, sugar: exactly(sugar), days: null, celsius: 12 }))
    const perGram = withSugar(1).now.high
    expect(withSugar((limit * 0.999) / perGram).says).toBe('not-shown-below')
    expect(withSugar((limit * 1.001) / perGram).says).toBe('could-burst-now')
    expect(withSugar((limit * 1.001) / perGram).now.low).toBeLessThan(limit)
  })

  test('of a bottle without a rating is a hazard from two bar on', () => {
    for (const bottle of ['square', 'canning-jar', 'wine', 'unknown'] as const) {
      expect(sealedPressure(sealed({ bottle, days: 1 })).says).toBe('could-burst-now')
    }
    expect(sealedPressure(sealed({ days: 1 })).says).toBe('not-shown-below')
  })

  test.each([
    ['negative sugar', { sugar: exactly(-1) }],
    ['ends the wrong way round', { sugar: { low: 30, mid: 20, high: 10 } }],
    ['a middle above its high end', { sugar: { low: 10, mid: 40, high: 20 } }],
    ['a middle under its low end', { sugar: { low: 30, mid: 20, high: 40 } }],
    ['300 °F', { celsius: 148.9 }],
    ['no headspace', { headspace: 0 }],
    ['days that are no number', { days: Number.NaN }]
  ])('is not worked out from %s', (_, wrong) => {
    expect(() => sealedPressure(sealed(wrong))).toThrow(BadInput)
  })
})

// 0.1, 0.4 and 1.75 volumes a day at 21 to 25 °C; ten degrees make it 1.5, 2 or 3 times faster: assumed.
describe('the gas of a day', () => {
  test.each([
    [11, 0.1 / 3, 0.2, 1.75 / 1.5],
    [21, 0.1, 0.4, 1.75],
    [25, 0.1, 0.4, 1.75],
    [35, 0.15, 0.8, 5.25]
  ])('at %d °C widens at both ends away from what was told', (warm, low, mid, high) => {
    expect(volumesADay('low', warm)).toBeCloseTo(low, 9)
    expect(volumesADay('mid', warm)).toBeCloseTo(mid, 9)
    expect(volumesADay('high', warm)).toBeCloseTo(high, 9)
  })
  test('is not worked out where nothing lives', () => {
    expect(() => volumesADay('mid', 60)).toThrow(BadInput)
  })
})
