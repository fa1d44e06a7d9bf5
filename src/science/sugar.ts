import { checked } from './bad-input.ts'
import { gasFromSugar, VOLUME } from './gas.ts'

/** g of ethanol in a mL at 20 °C. */
const ETHANOL_DENSITY = 0.78924
/** g of ethanol from a g of sucrose, all of it fermented: 4 × 46.07 / 342.30. */
const ETHANOL_PER_SUCROSE = 0.5383
/** Density of water, and of air, at 20 °C in g/mL. */
const WATER = 0.9982
const AIR = 0.0012

/** % alcohol by volume from which US law calls it an alcohol beverage, at any time (TTB; 27 CFR 25.15). */
export const ALCOHOL_LINE = 0.5

/**
 * Specific gravity 20/20 of a sugar solution in °Brix, 0 to 40 (USDA sucrose table within 2e-5).
 * @throws BadInput outside of that.
 */
export function gravityOfBrix(brix: number): number {
  checked('brix', brix, { from: 0, to: 40, unit: '°Bx' })
  return 1 + brix / (258.6 - 0.87955 * brix)
}

/**
 * °Brix from a specific gravity 20/20, 1 to 1.18: the inverse of `gravityOfBrix`.
 * @throws BadInput outside of that.
 */
export function brixOfGravity(gravity: number): number {
  checked('gravity', gravity, { from: 1, to: 1.18, unit: '' })
  return (258.6 * (gravity - 1)) / (1 + 0.87955 * (gravity - 1))
}

/**
 * g of sugar in a liter at 20 °C, from °Brix 0 to 40: by weight, so weighed against air.
 * @throws BadInput outside of that.
 */
export function sugarOfBrix(brix: number): number {
  return 10 * brix * (gravityOfBrix(brix) * (WATER - AIR) + AIR)
}

/** °Brix from g/L of sugar, 0 to 470. @throws BadInput outside of that. */
export function brixOfSugar(sugar: number): number {
  checked('sugar', sugar, { from: 0, to: 470, unit: 'g/L' })
  let [low, high] = [0, 40]
  for (let step = 0; step < 50; step++) {
    const middle = (low + high) / 2
    if (sugarOfBrix(middle) < sugar) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/**
 * % alcohol by volume at 20 °C from g/L of ethanol, 0 to 789.24 (pure).
 * @throws BadInput outside of that.
 */
export function alcoholOfEthanol(ethanol: number): number {
  checked('ethanol', ethanol, { from: 0, to: 1000 * ETHANOL_DENSITY, unit: 'g/L' })
  return ethanol / (10 * ETHANOL_DENSITY)
}

/**
 * The most % alcohol by volume that g/L of sucrose can have become. A ceiling and no estimate: part of it
 * turns to acid, and a falling °Brix cannot tell how much.
 * @throws BadInput outside 0 to 400 g/L.
 */
export function alcoholCeiling(fermented: number): number {
  checked('sugar', fermented, { from: 0, to: 400, unit: 'g/L' })
  return alcoholOfEthanol(fermented * ETHANOL_PER_SUCROSE)
}

/**
 * Volumes of carbon dioxide that come with so much alcohol, in a bottle that let none out.
 * @throws BadInput outside 0 to 25 % by volume, more than any fermentation makes.
 */
export function volumesWithAlcohol(percent: number): number {
  checked('alcohol', percent, { from: 0, to: 25, unit: '%' })
  return VOLUME * gasFromSugar((percent * 10 * ETHANOL_DENSITY) / ETHANOL_PER_SUCROSE)
}

/**
 * % alcohol by volume that comes with so many volumes of carbon dioxide in a bottle that let none out:
 * the inverse of `volumesWithAlcohol`.
 * @throws BadInput outside 0 to 95 volumes.
 */
export function alcoholWithVolumes(volumes: number): number {
  checked('volumes', volumes, { from: 0, to: 95, unit: '' })
  return (25 * volumes) / volumesWithAlcohol(25)
}
