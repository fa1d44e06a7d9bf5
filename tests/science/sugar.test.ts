import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { BadInput } from '../../src/science/bad-input.ts'
import {
  ALCOHOL_LINE,
  alcoholCeiling,
  alcoholOfEthanol,
  alcoholWithVolumes,
  brixOfGravity,
  brixOfSugar,
  gravityOfBrix,
  sugarOfBrix,
  volumesWithAlcohol
} from '../../src/science/sugar.ts'

const brix = fc.double({ min: 0, max: 39, noNaN: true })

describe('sugar by °Brix, gravity and weight', () => {
  test('comes back from each to each', () => {
    fc.assert(
      fc.property(brix, value => {
        expect(brixOfGravity(gravityOfBrix(value))).toBeCloseTo(value, 9)
        expect(brixOfSugar(sugarOfBrix(value))).toBeCloseTo(value, 9)
      })
    )
  })

  // USDA sucrose table 135-A-50, in a copy.
  test.each([
    [4.1, 1.01609],
    [7.6, 1.03017],
    [7.9, 1.03139]
  ])('%d °Bx has the gravity of the USDA table', (value, gravity) => {
    expect(Math.abs(gravityOfBrix(value) - gravity)).toBeLessThan(2e-5)
  })

  test('outside the tables is not worked out', () => {
    expect(() => gravityOfBrix(55)).toThrow(BadInput)
    expect(() => brixOfGravity(0.9)).toThrow(BadInput)
    expect(() => brixOfSugar(-3)).toThrow(BadInput)
  })
})

describe('alcohol', () => {
  // Chen and Liu 2000, ethanol read off a plot: 4.32 and 4.34 g/L.
  test.each([
    [4.32, 0.547],
    [4.34, 0.55]
  ])('%d g/L of ethanol is %d % by volume', (ethanol, percent) => {
    expect(alcoholOfEthanol(ethanol)).toBeCloseTo(percent, 3)
  })

  // TTB: an alcohol beverage from 0.5 % at any time. 7.33 g/L of sucrose can make it, and 1.91 volumes of gas.
  test('half a percent can come of 7.33 grams of sugar and brings 1.91 volumes of gas', () => {
    expect(alcoholCeiling(7.33)).toBeCloseTo(ALCOHOL_LINE, 3)
    expect(volumesWithAlcohol(ALCOHOL_LINE)).toBeCloseTo(1.91, 2)
  })

  test('and the gas beside it come back from each other', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 24, noNaN: true }), percent => {
        expect(alcoholWithVolumes(volumesWithAlcohol(percent))).toBeCloseTo(percent, 9)
      })
    )
  })

  test.each([
    ['more sugar than a syrup holds', () => alcoholCeiling(900)],
    ['less than no ethanol', () => alcoholOfEthanol(-1)],
    ['more than pure ethanol', () => alcoholOfEthanol(790)],
    ['a percentage that is no number', () => volumesWithAlcohol(Number.NaN)],
    ['less than no gas', () => alcoholWithVolumes(-0.1)]
  ])('of %s is not worked out', (_, wrong) => {
    expect(wrong).toThrow(BadInput)
  })
})
