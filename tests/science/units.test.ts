import { convert } from 'convert'
import fc from 'fast-check'
import Qty from 'js-quantities'
import { describe, expect, test } from 'vitest'
import { amount, inUnit, sum, UNITS, type UnitName, type UnitOf } from '../../src/science/units.ts'

const NAMES = Object.keys(UNITS) as UnitName[]
const number = fc.double({ min: -1e6, max: 1e6, noNaN: true })

describe('an amount', () => {
  test('told in any unit comes back to 1e-12', () => {
    fc.assert(
      fc.property(number, fc.constantFrom(...NAMES), (value, unit) => {
        const back = inUnit(amount(value, unit), unit as never)
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * Math.max(100, Math.abs(value)))
      })
    )
  })

  test('of one dimension is never added to another', () => {
    const cups = amount(2, 'cup')
    // @ts-expect-error grams are no volume
    expect(() => sum(cups, amount(3, 'g'))).not.toThrow()
    // @ts-expect-error a bare number of milliliters has no unit
    expect(() => sum(cups, 500)).not.toThrow()
    // @ts-expect-error a volume is not read in pounds
    expect(() => inUnit(cups, 'lb')).not.toThrow()
    expect(inUnit(sum(cups, amount(14, 'cup')), 'gal')).toBeCloseTo(1, 12)
  })
})

// Library `convert` 8.0.2: exact factors by its own tables.
describe('agrees with the library convert', () => {
  const THEIRS = {
    cup: 'cup',
    tbsp: 'tablespoon',
    tsp: 'teaspoon',
    pint: 'pint',
    quart: 'quart',
    gal: 'gallon',
    L: 'liter'
  } as const satisfies Partial<Record<UnitOf<'volume'>, string>>
  test.each(Object.entries(THEIRS))('on %s', (ours, theirs) => {
    const mine = inUnit(amount(3, ours as UnitOf<'volume'>), 'mL')
    expect(mine).toBeCloseTo(convert(3, theirs as 'liter').to('milliliter'), 8)
  })
  test('on pounds and ounces', () => {
    expect(inUnit(amount(5, 'lb'), 'g')).toBeCloseTo(convert(5, 'pound').to('gram'), 8)
    expect(inUnit(amount(5, 'oz'), 'g')).toBeCloseTo(convert(5, 'ounce').to('gram'), 8)
  })
})

// Library `js-quantities` 1.8.0 is good to about seven digits.
describe('agrees with the library js-quantities', () => {
  test.each([
    ['cup', 'cu', 'mL'],
    ['gal', 'gal', 'mL'],
    ['psi', 'psi', 'kPa'],
    ['bar', 'bar', 'kPa'],
    ['atm', 'atm', 'kPa'],
    ['lb', 'lb', 'g']
  ] as const)('on %s', (ours, theirs, base) => {
    const mine = inUnit(amount(7, ours as 'cup'), base as 'mL')
    const his = Qty(7, theirs).to(base).scalar
    expect(Math.abs(mine / his - 1)).toBeLessThan(1e-6)
  })
  test.each([-40, 68, 75, 80])('on %d degrees Fahrenheit', degrees => {
    const his = Qty(`${degrees} tempF`).to('tempC').scalar
    expect(inUnit(amount(degrees, 'F'), 'C')).toBeCloseTo(his, 6)
  })
})

// Worked amounts: NIST Handbook 44, appendix C. A gallon holds 16 cups, a cup 8 fluid ounces.
test('a gallon is 16 cups, 128 fluid ounces, 768 teaspoons', () => {
  expect(inUnit(amount(1, 'gal'), 'cup')).toBeCloseTo(16, 12)
  expect(inUnit(amount(1, 'gal'), 'floz')).toBeCloseTo(128, 11)
  expect(inUnit(amount(1, 'gal'), 'tsp')).toBeCloseTo(768, 10)
  expect(inUnit(amount(1, 'imperial-gal'), 'mL')).toBe(4546.09)
  expect(inUnit(amount(1, 'psi'), 'kPa')).toBeCloseTo(6.894757, 6)
  expect(inUnit(amount(1, 'atm'), 'psi')).toBeCloseTo(14.695949, 6)
})
