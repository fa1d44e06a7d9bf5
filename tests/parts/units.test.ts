import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { TYPED_UNITS } from '../../src/parts/units.ts'

const unit = (measure: keyof typeof TYPED_UNITS, id: string) => {
  const found = TYPED_UNITS[measure].find(one => one.id === id)
  if (found === undefined) throw new Error(`${measure} cannot be typed in ${id}`)
  return found
}

describe('degrees Celsius', () => {
  const celsius = unit('fahrenheit', 'celsius')

  // Fixed points and factor as in NIST SP 811, from memory.
  test.each([
    [0, 32],
    [100, 212],
    [37, 98.6],
    [-40, -40]
  ])('%d °C is %d °F, and the other way round', (c, f) => {
    expect(celsius.toMeasure(c)).toBe(f)
    expect(celsius.fromMeasure(f)).toBe(c)
  })

  test('come back to a tenth of a degree after both ways', () => {
    fc.assert(
      fc.property(fc.integer({ min: -400, max: 1000 }), tenths => {
        expect(celsius.fromMeasure(celsius.toMeasure(tenths / 10))).toBeCloseTo(tenths / 10, 1)
      })
    )
  })
})

describe('weeks', () => {
  const weeks = unit('day', 'weeks')

  test('count only the days that are over', () => {
    expect([1, 1.5, 2, 0.1].map(weeks.toMeasure)).toEqual([7, 10, 14, 0])
  })

  test('never make a jar older than it is', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 500, noNaN: true }), typed => {
        const days = weeks.toMeasure(typed)
        expect(Number.isInteger(days)).toBe(true)
        expect(days).toBeLessThanOrEqual(typed * 7)
        expect(days).toBeGreaterThan(typed * 7 - 1)
      })
    )
  })
})
