import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { BadInput } from '../../src/science/bad-input.ts'
import {
  BAR_PER_ATM,
  gasFromSugar,
  partialPressure,
  solubility,
  VOLUME
} from '../../src/science/gas.ts'
import { amount, inUnit } from '../../src/science/units.ts'

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

  // Shedlovsky and MacInnes 1935 (SRD 106 62_26), mol/L/atm at 25 °C; the scan prints only its digits.
  test('dissolves at 25 °C as measured in 1935, to two percent', () => {
    expect(Math.abs(solubility(25) / 0.03372 - 1)).toBeLessThan(0.02)
  })

  // Two sources beside the check values: a keg chart at sea level; Miller, BrewingTechniques 2.1.
  test.each([
    [32, 2.5, 8.4],
    [38, 2.5, 11.3],
    [40, 2.5, 12.4],
    [42, 2.5, 13.3],
    [36, 2.47, 10],
    [38, 2.57, 12],
    [45, 2.94, 20]
  ])('at %d °F and %d volumes lies about the published %d psi', (degrees, volumes, psi) => {
    const warm = inUnit(amount(degrees, 'F'), 'C')
    const gauge = (solids: number) =>
      inUnit(amount(partialPressure(volumes / VOLUME, warm, 0, solids) - 1, 'atm'), 'psi')
    expect(psi).toBeGreaterThanOrEqual(gauge(1) - 0.5)
    expect(psi).toBeLessThanOrEqual(gauge(0.92) + 0.5)
  })

  // Worked out once by another program with the same equations: fermented g/L for so many bar.
  test.each([
    [2, 4, 11],
    [2, 20, 6.6],
    [2, 25, 5.8],
    [2, 30, 5.1],
    [3.1, 25, 8.9],
    [4, 4, 22.1],
    [4, 20, 13.3],
    [4, 25, 11.6],
    [4, 30, 10.3],
    [6, 4, 33.1],
    [6, 20, 19.9],
    [6, 25, 17.4],
    [6, 30, 15.4],
    [15, 20, 50]
  ])('of %d bar at %d °C takes %d g/L of sugar', (bar, warm, sugar) => {
    const found = BAR_PER_ATM * partialPressure(gasFromSugar(sugar), warm, 0.05, 0.95)
    expect(Math.abs(found / bar - 1)).toBeLessThan(0.015)
  })

  test.each([
    ['less than no sugar', () => gasFromSugar(-1)],
    ['gas that is no number', () => partialPressure(Number.NaN, 20, 0.05, 0.95)],
    ['less than no headspace', () => partialPressure(0.1, 20, -0.05, 0.95)],
    ['a drink that dissolves more than water', () => partialPressure(0.1, 20, 0.05, 1.2)],
    ['300 °F', () => partialPressure(0.1, 148.9, 0.05, 0.95)]
  ])('is not worked out from %s', (_, wrong) => {
    expect(wrong).toThrow(BadInput)
  })
})

// 1 volume is a liter of gas at 0 °C and 1 atm in a liter: 1.977 g/L.
test('a volume weighs what the tables say', () => {
  expect(44.01 / VOLUME).toBeCloseTo(1.977, 3)
})
