import { checked } from './bad-input.ts'

/** An acid in water: what it gives off, step by step, and how much of it there is. */
export interface Acid {
  /** One for each proton, first the one that leaves first; at 25 °C. */
  readonly pKa: readonly number[]
  /** mol/L in all its forms. */
  readonly molar: number
}

/** What tea and water take up of an acid: `capacity` eq/L for each pH below `neutral`. */
export interface Buffer {
  readonly capacity: number
  readonly neutral: number
}

export interface Solution {
  readonly acids: readonly Acid[]
  /** Strong cations less strong anions, eq/L: positive for a salt, negative for a strong acid. */
  readonly strongIons?: number
  readonly buffer?: Buffer
}

/**
 * pKa at 25 °C. Acetic and citric: CRC values as in LibreTexts table E1. Lactic: aqion; ECHA 14252.
 * Gluconic: ECHA dossier 1957, which spans 3.6 to 3.86; glucuronic acid is counted with it. Formic: the
 * table that the checks use. Phthalic: from memory.
 */
export const PKA = {
  acetic: [4.756],
  lactic: [3.86],
  gluconic: [3.7],
  citric: [3.13, 4.76, 6.4],
  formic: [3.75],
  phthalic: [2.95, 5.408]
} as const

const WATER = 1e-14
/** Bisections of 14 pH: 1e-11 is left. */
const STEPS = 40
const IONS_AGREE = 1e-9
const ROUNDS = 50

/** How much less an ion of charge z counts than its concentration (Davies, 25 °C, up to 0.1 mol/L). */
export function activity(charge: number, ionicStrength: number): number {
  const root = Math.sqrt(ionicStrength)
  return 10 ** (-0.509 * charge * charge * (root / (1 + root) - 0.3 * ionicStrength))
}

/** The pH at which a falling balance of charges comes to nothing, by bisection between 0 and 14. */
export function phWhere(balance: (ph: number) => number): number {
  let low = 0
  let high = 14
  for (let step = 0; step < STEPS; step++) {
    const middle = (low + high) / 2
    if (balance(middle) > 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/**
 * The pH of acids in water, by balance of charges with Davies activities. Good to about 0.02 pH for an
 * ionic strength up to 0.1 mol/L and 15 to 30 °C.
 *
 * @throws BadInput for a concentration that is negative or not finite.
 */
export function phOf({ acids, strongIons = 0, buffer }: Solution): number {
  for (const { molar } of acids) checked('acid', molar, { from: 0, to: 20, unit: 'mol/L' })
  checked('strong-ions', strongIons, { from: -20, to: 20, unit: 'eq/L' })
  let ionicStrength = 0
  let ph = 7
  for (let round = 0; round < ROUNDS; round++) {
    const gammas = [1, 2, 3].map(charge => activity(charge, ionicStrength))
    const given = (index: number) => acids.map(acid => ions(acid, 10 ** -index, gammas))
    const [one = 1] = gammas
    ph = phWhere(trial => {
      const hydrogen = 10 ** -trial
      const taken = buffer ? buffer.capacity * Math.max(0, buffer.neutral - trial) : 0
      const negative = given(trial).reduce((sum, { charge }) => sum + charge, 0)
      return hydrogen / one + strongIons + taken - negative - WATER / (hydrogen * one)
    })
    const hydrogen = 10 ** -ph
    const ofAcids = given(ph).reduce((sum, { strength }) => sum + strength, 0)
    const all = hydrogen / one + WATER / (hydrogen * one) + Math.abs(strongIons) + ofAcids
    const next = all / 2
    if (Math.abs(next - ionicStrength) < IONS_AGREE) break
    ionicStrength = next
  }
  return ph
}

/** The negative charge of an acid's ions, eq/L, and twice what they add to the ionic strength. */
function ions({ pKa, molar }: Acid, hydrogen: number, gammas: readonly number[]) {
  let form = 1
  let all = 1
  let charge = 0
  let strength = 0
  let before = 1
  for (const [index, gamma] of gammas.entries()) {
    const constant = pKa[index]
    if (constant === undefined) break
    form *= ((10 ** -constant / hydrogen) * before) / gamma
    all += form
    charge += (index + 1) * form
    strength += (index + 1) ** 2 * form
    before = gamma
  }
  return { charge: (molar * charge) / all, strength: (molar * strength) / all }
}

/** g of acetic acid in a mol. */
const ACETIC_MASS = 60.052

/** Titratable acidity as g/L of acetic acid, from mol/L of each acid and the protons that it can give. */
export function asAcetic(acids: readonly Acid[], strongIons = 0): number {
  const protons = acids.reduce((sum, { pKa, molar }) => sum + pKa.length * molar, 0)
  return Math.max(0, protons - strongIons) * ACETIC_MASS
}
