import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { BadInput } from '../../src/science/bad-input.ts'
import {
  BAR_PER_ATM,
  BOTTLES,
  type BottleKind,
  gasFromSugar,
  partialPressure,
  type Sealed,
  sealedPressure,
  solubility,
  VOLUME
} from '../../src/science/gas.ts'
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
const made = fc.double({ min: 0.001, max: 0.5, noNaN: true })
const room = fc.double({ min: 0.01, max: 1, noNaN: true })

describe('gas in a sealed bottle', () => {
  test('is all there: what is dissolved and what is above make up what was made', () => {
    fc.assert(
      fc.property(made, celsius, room, (n, warm, headspace) => {
        const atm = partialPressure(n, warm, headspace, 0.95)
        const dissolved = atm * 0.95 * solubility(warm)
        const above = (atm * headspace) / (0.0820574 * (warm + 273.15))
        expect(dissolved + above).toBeCloseTo(n, 9)
      })
    )
  })

  // C12H22O11 + H2O → 4 CO2 + 4 C2H5OH: 0.5143 g of carbon dioxide from a gram of sucrose.
  test('comes from sugar by the equation of fermentation', () => {
    expect(gasFromSugar(1) * 44.01).toBeCloseTo(0.5143, 4)
  })

  test('presses more the warmer it is, the more was made, the less room there is', () => {
    fc.assert(
      fc.property(made, celsius, room, (n, warm, headspace) => {
        const here = partialPressure(n, warm, headspace, 0.95)
        expect(partialPressure(n, warm + 1, headspace, 0.95)).toBeGreaterThan(here)
        expect(partialPressure(n * 1.1, warm, headspace, 0.95)).toBeGreaterThan(here)
        expect(partialPressure(n, warm, headspace * 1.1, 0.95)).toBeLessThan(here)
      })
    )
  })

  // Champagne: 24 g/L of sugar make about 6 bar at 10 to 12 °C; from memory.
  test('of a sparkling wine comes near the known six bar', () => {
    const bar = BAR_PER_ATM * partialPressure(gasFromSugar(24), 12, 0.03, 0.95)
    expect(bar).toBeGreaterThan(5.5)
    expect(bar).toBeLessThan(6.3)
  })

  // Worked out once by another program with the same equations: fermented g/L for 4 bar.
  test.each([
    [4, 22.1],
    [20, 13.3],
    [25, 11.6],
    [30, 10.3]
  ])('at %d °C four bar take %d g/L', (warm, sugar) => {
    const bar = BAR_PER_ATM * partialPressure(gasFromSugar(sugar), warm, 0.05, 0.95)
    expect(bar).toBeCloseTo(4, 1)
  })
})

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

  test('of a bottle without a rating is a hazard from two bar on', () => {
    for (const bottle of ['square', 'canning-jar', 'wine', 'unknown'] as const) {
      expect(sealedPressure(sealed({ bottle, days: 1 })).says).toBe('could-burst-now')
    }
    expect(sealedPressure(sealed({ days: 1 })).says).toBe('not-shown-below')
  })

  test.each([
    ['negative sugar', { sugar: exactly(-1) }],
    ['300 °F', { celsius: 148.9 }],
    ['no headspace', { headspace: 0 }],
    ['days that are no number', { days: Number.NaN }]
  ])('is not worked out from %s', (_, wrong) => {
    expect(() => sealedPressure(sealed(wrong))).toThrow(BadInput)
  })
})

// 1 volume is a liter of gas at 0 °C and 1 atm in a liter: 1.977 g/L.
test('a volume weighs what the tables say', () => {
  expect(44.01 / VOLUME).toBeCloseTo(1.977, 3)
})
