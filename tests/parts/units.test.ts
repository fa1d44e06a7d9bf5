import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readTyped, TYPED_UNITS } from '../../src/parts/units.ts'

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

describe('a typed number', () => {
  test.each([
    ['3.5', 3.5],
    [' 3,5 ', 3.5],
    ['0', 0],
    ['007', 7]
  ])('%j is read as people mean it', (text, number) => {
    expect(readTyped(text)).toBe(number)
  })

  test.each([
    '',
    ' ',
    'sour',
    '-1',
    '1e3',
    '3.',
    '.5',
    '1,234.5',
    '3 5',
    '0x10',
    'Infinity',
    'NaN'
  ])('%j is none', text => {
    expect(readTyped(text)).toBeNull()
  })

  test('is never read from garbage as anything but a finite number', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), text => {
        const number = readTyped(text.slice(0, 300))
        expect(number === null || number >= 0).toBe(true)
      })
    )
  })
})
