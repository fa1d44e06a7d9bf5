import { checked } from './bad-input.ts'
import { type Amount, inUnit } from './units.ts'

/** What may stand on a label besides the strength; each of these is not for what food touches. */
export type Additive = 'scented' | 'gel' | 'splashless'
export interface Bleach {
  /** % sodium hypochlorite on the label; null when there is none. */
  readonly strength: number | null
  readonly additives?: readonly Additive[]
}

export interface Dilution {
  readonly standing: 'dilution'
  /** mL of bleach in each liter of water for the target. */
  readonly perLiter: number
  /** The whole amount, rounded down to quarter teaspoons; 0 when that is less than one of them. */
  readonly teaspoons: number
  /** The whole amount in mL, rounded down to half milliliters. */
  readonly milliliters: number
  /** ppm of chlorine that the teaspoons, and the milliliters, make. */
  readonly ppm: number
  readonly ppmOfMilliliters: number
  /** The plain rule for this label: teaspoons to a gallon of water, and its ppm. */
  readonly plain: { readonly teaspoons: number; readonly ppm: number }
  /** Over 200 ppm what food touches has to be rinsed. */
  readonly rinse: boolean
  /** Said beside every amount. */
  readonly never: typeof NEVER
}

export type Refused = {
  readonly standing: 'refused'
  readonly because: Additive | 'no-strength' | 'too-weak' | 'too-strong'
  /** Said here too: who is refused may still have the bottle in hand. */
  readonly never: typeof NEVER
}

const NEVER = ['vinegar', 'ammonia'] as const

/** No more without a rinse: 40 CFR 180.940. */
export const NO_RINSE = 200
const PPM_PER_PERCENT = 10_000
const GALLON = 231 * 2.54 ** 3
const TEASPOON = GALLON / 768
const WEAKEST = 5
const STRONGEST = 8.25
const QUARTER = 0.25
const HALF_MILLILITER = 0.5

/**
 * How much bleach makes an amount of water so strong, in measures that a kitchen has, always rounded down.
 * Bleach that is scented, gel, splashless, weaker than 5 %, stronger than 8.25 % or without a strength is
 * refused. The strength counts as weight by volume of available chlorine; that is 3 to 6 % too little.
 *
 * @throws BadInput for a target outside 1 to 1000 ppm, a strength outside 0 to 100 %, or no water.
 */
export function dilute(
  { strength, additives = [] }: Bleach,
  target: number,
  water: Amount<'volume'>
): Dilution | Refused {
  checked('target', target, { from: 1, to: 1000, unit: 'ppm' })
  const milliliters = checked('water', inUnit(water, 'mL'), { from: 1, to: 1e6, unit: 'mL' })
  const [additive] = additives
  if (additive !== undefined) return refused(additive)
  if (strength === null) return refused('no-strength')
  checked('label-strength', strength, { from: 0, to: 100, unit: '%' })
  if (strength < WEAKEST) return refused('too-weak')
  if (strength > STRONGEST) return refused('too-strong')
  const perLiter = (target / (strength * PPM_PER_PERCENT)) * 1000
  const whole = (perLiter * milliliters) / 1000
  const teaspoons = roundedDown(whole / TEASPOON, QUARTER)
  const inMilliliters = roundedDown(whole, HALF_MILLILITER)
  const ppm = partsPerMillion(strength, teaspoons * TEASPOON, milliliters)
  const plain = plainTeaspoons(strength)
  return {
    standing: 'dilution',
    perLiter,
    teaspoons,
    milliliters: inMilliliters,
    ppm,
    ppmOfMilliliters: partsPerMillion(strength, inMilliliters, milliliters),
    plain: { teaspoons: plain, ppm: partsPerMillion(strength, plain * TEASPOON, GALLON) },
    rinse: target > NO_RINSE,
    never: NEVER
  }
}

const refused = (because: Refused['because']): Refused => ({
  standing: 'refused',
  because,
  never: NEVER
})

/**
 * ppm of chlorine from mL of bleach in mL of water; strength in % weight by volume.
 * @throws BadInput for a strength outside 0 to 100 %, bleach outside 0 to 1e6 mL, water outside 1 to 1e6 mL.
 */
export function partsPerMillion(strength: number, bleach: number, water: number): number {
  checked('strength', strength, { from: 0, to: 100, unit: '%' })
  checked('bleach', bleach, { from: 0, to: 1e6, unit: 'mL' })
  checked('water', water, { from: 1, to: 1e6, unit: 'mL' })
  return (strength * PPM_PER_PERCENT * bleach) / (bleach + water)
}

/** The plain rule: 2 teaspoons to a gallon up to 7.5 %, and 1½ above. 130 to 195 ppm. */
const plainTeaspoons = (strength: number): number => (strength <= 7.5 ? 2 : 1.5)

// A hair is forgiven: 2 teaspoons worked out as 1.9999999 are 2.
const roundedDown = (value: number, step: number): number => Math.floor(value / step + 1e-9) * step
