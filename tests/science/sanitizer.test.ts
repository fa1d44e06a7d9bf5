import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { BadInput } from '../../src/science/bad-input.ts'
import { type Additive, dilute, NO_RINSE, partsPerMillion } from '../../src/science/sanitizer.ts'
import { amount, inUnit } from '../../src/science/units.ts'

const GALLON = amount(1, 'gal')
const NEVER = ['vinegar', 'ammonia']
const made = (strength: number, target = 200, water = GALLON) => {
  const found = dilute({ strength }, target, water)
  if (found.standing === 'refused') throw new Error(found.because)
  return found
}

describe('bleach for a gallon', () => {
  // 40 CFR 180.940: up to 200 ppm needs no rinse. The amounts are the rule rounded down to kitchen spoons.
  test.each([
    [5, 2],
    [5.25, 2],
    [6, 2],
    [7.5, 2],
    [8.25, 1.5]
  ])('a label of %d % takes %d teaspoons by the plain rule, 130 to 200 ppm', (label, spoons) => {
    const { plain } = made(label)
    expect(plain.teaspoons).toBe(spoons)
    expect(plain.ppm).toBeGreaterThanOrEqual(129.5)
    expect(plain.ppm).toBeLessThanOrEqual(NO_RINSE)
  })

  test('of the strongest kind is less than a spoonful of the older rule, which would make 321 ppm', () => {
    const tablespoon = inUnit(amount(1, 'tbsp'), 'mL')
    expect(partsPerMillion(8.25, tablespoon, inUnit(GALLON, 'mL'))).toBeCloseTo(321, 0)
    expect(made(8.25).teaspoons).toBe(1.75)
    expect(made(8.25).ppm).toBeCloseTo(188, 0)
  })

  // Published dilutions: NC State, 1/4 cup in 5 gallons; a guideline's 1½ fl oz in 3 and 2 fl oz in 5 gallons.
  test.each([
    ['¼ cup in 5 gallons', amount(0.25, 'cup'), 5, 164],
    ['1½ fl oz in 3 gallons', amount(1.5, 'floz'), 3, 204],
    ['2 fl oz in 5 gallons', amount(2, 'floz'), 5, 164]
  ])('%s of 5.25 % makes the published ppm', (_, bleach, gallons, ppm) => {
    const water = inUnit(amount(gallons, 'gal'), 'mL')
    expect(Math.abs(partsPerMillion(5.25, inUnit(bleach, 'mL'), water) - ppm)).toBeLessThan(1.5)
  })

  test('is rounded down, never over the target', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 8.25, noNaN: true }),
        fc.integer({ min: 10, max: 1000 }),
        fc.double({ min: 0.05, max: 20, noNaN: true }),
        (strength, target, gallons) => {
          const found = made(strength, target, amount(gallons, 'gal'))
          expect(found.ppm).toBeLessThanOrEqual(target)
          expect(found.ppmOfMilliliters).toBeLessThanOrEqual(target)
          expect(Number.isInteger(found.teaspoons * 4)).toBe(true)
          expect(Number.isInteger(found.milliliters * 2)).toBe(true)
          expect(found.rinse).toBe(target > 200)
          expect(found.never).toEqual(NEVER)
        }
      )
    )
  })
})

describe('what is not for dishes is refused', () => {
  test.each(['scented', 'gel', 'splashless'] as const satisfies readonly Additive[])(
    '%s bleach',
    additive => {
      const found = dilute({ strength: 7.5, additives: [additive] }, 200, GALLON)
      expect(found).toEqual({ standing: 'refused', because: additive, never: NEVER })
    }
  )
  test.each([
    [null, 'no-strength'],
    [3, 'too-weak'],
    [4.99, 'too-weak'],
    [12.5, 'too-strong']
  ] as const)('a label of %s', (strength, because) => {
    const found = dilute({ strength }, 200, GALLON)
    expect(found).toEqual({ standing: 'refused', because, never: NEVER })
  })
  test.each([
    ['no target', () => dilute({ strength: 6 }, 0, GALLON)],
    ['no water', () => dilute({ strength: 6 }, 200, amount(0, 'gal'))],
    ['a negative strength', () => dilute({ strength: -6 }, 200, GALLON)],
    ['a strength that is no number', () => dilute({ strength: Number.NaN }, 200, GALLON)],
    ['nothing in nothing', () => partsPerMillion(6, 0, 0)],
    ['less than no bleach', () => partsPerMillion(6, -1, 100)]
  ])('%s is an error that names the span', (_, wrong) => {
    expect(wrong).toThrow(BadInput)
  })
})
