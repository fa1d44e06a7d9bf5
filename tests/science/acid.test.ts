import { describe, expect, test } from 'vitest'
import { asAcetic, PKA, phOf } from '../../src/science/acid.ts'
import { BadInput } from '../../src/science/bad-input.ts'

const acetic = (molar: number) => ({ pKa: PKA.acetic, molar })

describe('the pH of acids in water', () => {
  // Covington, Bates and Durst 1985, Pure Appl. Chem. 57:531, values from memory.
  test.each([
    [0.1, 4.65],
    [0.01, 4.71]
  ])('a buffer of %d mol/L acetic acid and as much acetate', (molar, expected) => {
    const found = phOf({ acids: [acetic(2 * molar)], strongIons: molar })
    expect(Math.abs(found - expected)).toBeLessThan(0.02)
  })

  // pH of common acids and bases, aqion values; at 0.1 mol/L the activities are at their limit.
  test.each([
    [0.001, 3.01, 0.02],
    [0.01, 2.04, 0.02],
    [0.1, 1.08, 0.04]
  ])('hydrochloric acid of %d mol/L', (molar, expected, tolerance) => {
    expect(Math.abs(phOf({ acids: [], strongIons: -molar }) - expected)).toBeLessThan(tolerance)
  })

  // Vinegar: pH 2.4 to 3.4 in FDA's list of foods, from memory. 5 % by volume is 0.8326 mol/L.
  test('table vinegar lies in the published range', () => {
    const ph = phOf({ acids: [acetic(0.8326)] })
    expect(ph).toBeGreaterThan(2.35)
    expect(ph).toBeLessThan(3.4)
  })

  // Lembono 2025, day 14: 0.240 mol/L at pH 2.56; acetic acid alone and 60:40 with gluconic lie around it.
  test('a published pair of acid and pH lies between two makeups of the acid', () => {
    const alone = phOf({ acids: [acetic(0.24)] })
    const mixed = phOf({ acids: [acetic(0.144), { pKa: PKA.gluconic, molar: 0.096 }] })
    expect(mixed).toBeLessThan(2.56)
    expect(alone).toBeGreaterThan(2.56)
  })

  test('pure water is neutral', () => {
    expect(phOf({ acids: [] })).toBeCloseTo(7, 6)
  })

  test('of a negative concentration is not worked out', () => {
    expect(() => phOf({ acids: [acetic(-0.1)] })).toThrow(BadInput)
  })
})

// 60.052 g of acetic acid in a mol: 5 % by volume is 50 g/L.
test('titratable acid is told as acetic', () => {
  expect(asAcetic([acetic(0.8326)])).toBeCloseTo(50, 1)
  expect(asAcetic([{ pKa: PKA.citric, molar: 0.1 }])).toBeCloseTo(18.0156, 3)
  expect(asAcetic([acetic(0.2)], 0.1)).toBeCloseTo(6.0052, 4)
})
