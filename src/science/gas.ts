import { checked } from './bad-input.ts'
import { OPPOSITE, volumesADay } from './gas-rate.ts'
import type { Span } from './span.ts'

/** L·atm/(mol·K) */
const GAS = 0.0820574
const KELVIN = 273.15
export const BAR_PER_ATM = 1.01325
/** g in a mol. */
const SUCROSE = 342.3
/** mol of carbon dioxide from a mol of sucrose: C12H22O11 + H2O → 4 CO2 + 4 C2H5OH. */
const PER_SUCROSE = 4
/** L that a mol of carbon dioxide fills at 0 °C and 1 atm: one "volume" is a liter of it in a liter. */
export const VOLUME = 22.26
/** Less gas dissolves in a drink than in water; 1 is water. */
const SOLIDS = { low: 0.92, mid: 0.95, high: 1 } as const

/**
 * How much carbon dioxide water takes up, mol/(kg·atm), −1 to 45 °C; salinity in parts per thousand.
 * Weiss 1974, Mar. Chem. 2:203.
 * @throws BadInput outside of that.
 */
export function solubility(celsius: number, salinity = 0): number {
  checked('temperature', celsius, { from: -1, to: 45, unit: '°C' })
  checked('salinity', salinity, { from: 0, to: 45, unit: '‰' })
  const t = (celsius + KELVIN) / 100
  const salt = salinity * (0.023517 - 0.023656 * t + 0.0047036 * t * t)
  return Math.exp(-60.2409 + 93.4517 / t + 23.3585 * Math.log(t) + salt)
}

/** g/L of sugar that any model here takes. */
const SUGAR = { from: 0, to: 400, unit: 'g/L' } as const

/**
 * mol/L of carbon dioxide from g/L of sucrose, all of it fermented: stoichiometry.
 * @throws BadInput outside 0 to 400 g/L.
 */
export const gasFromSugar = (sucrose: number): number =>
  (PER_SUCROSE * checked('sugar', sucrose, SUGAR)) / SUCROSE

/**
 * The pressure of carbon dioxide, in atm, over a sealed drink: what was made is in the liquid or above it.
 * In a bottle that was capped with air this is what a gauge shows; real gases differ by under 4 % to 6 bar.
 *
 * @param made mol in each liter of liquid, 0 to 10
 * @param celsius −1 to 45 °C
 * @param headspace liters above each liter of liquid, 0 to 10
 * @param solids 0.92 to 1: how much less dissolves than in water
 * @throws BadInput outside of these.
 */
export function partialPressure(
  formed: number,
  celsius: number,
  headspace: number,
  solids: number
): number {
  checked('made', formed, { from: 0, to: 10, unit: 'mol/L' })
  checked('headspace', headspace, { from: 0, to: 10, unit: '' })
  checked('solids', solids, { from: SOLIDS.low, to: SOLIDS.high, unit: '' })
  return formed / (solids * solubility(celsius) + headspace / (GAS * (celsius + KELVIN)))
}

/** How a bottle is made, and the gauge pressure in bar at which it is a hazard. */
export type BottleKind = keyof typeof BOTTLES

/**
 * Gauge bar. A third of what makers say that new bottles bear (GB 4544: 12 bar for beer bottles), sparkling
 * wine bottles and plastic likewise; the third is our judgement. No rating is published for jars, square,
 * wine or scuffed bottles: any above 2 bar counts.
 */
export const BOTTLES = {
  'swing-top': { hazard: 4 },
  beer: { hazard: 4 },
  plastic: { hazard: 5 },
  sparkling: { hazard: 6 },
  square: { hazard: 2 },
  'canning-jar': { hazard: 2 },
  wine: { hazard: 2 },
  unknown: { hazard: 2 }
} as const

/**
 * g/L of sugar for a bottle of which nobody knows it: anything up to all that a batch begins with, none of
 * it used. A cup to a gallon is 53 g/L, recipes go from 50 to 100 (common practice).
 */
export const WHOLE_BATCH = { low: 0, mid: 53, high: 100 } as const satisfies Span

export interface Sealed {
  /** g/L of sugar in the bottle when it was sealed, as sucrose; `WHOLE_BATCH` when nobody knows. */
  readonly sugar: Span
  /** Days at this temperature since then; null when nobody knows: as long as the sugar lasts. */
  readonly days: number | null
  readonly celsius: number
  /** Room above the liquid as a part of the liquid, 0.01 to 1. */
  readonly headspace: number
  readonly bottle: BottleKind
}

export interface Pressure {
  /** Gauge bar now. */
  readonly now: Span
  /** Gauge bar once all the sugar is gone. */
  readonly ceiling: Span
  /** Gauge bar at which this kind of bottle is a hazard. */
  readonly limit: number
  /** There is no third: nothing here ever shows that a bottle holds. */
  readonly says: 'could-burst-now' | 'not-shown-below'
}

/**
 * The pressure in a sealed bottle as an interval, from its sugar, days and warmth; capped by the sugar.
 * For caution alone: it never tells a day until which a bottle holds.
 *
 * @throws BadInput for sugar outside 0 to 400 g/L or with its ends the wrong way round, days outside 0 to
 * 3650, headspace outside 0.01 to 1, or a temperature outside −1 to 45 °C.
 */
export function sealedPressure({ sugar, days, celsius, headspace, bottle }: Sealed): Pressure {
  for (const value of [sugar.low, sugar.mid, sugar.high]) checked('sugar', value, SUGAR)
  // Ends the wrong way round would call a bottle gentler than it can be.
  checked('sugar', sugar.mid, { ...SUGAR, from: sugar.low })
  checked('sugar', sugar.high, { ...SUGAR, from: sugar.mid })
  if (days !== null) checked('days', days, { from: 0, to: 3650, unit: 'days' })
  checked('headspace', headspace, { from: 0.01, to: 1, unit: '' })
  checked('temperature', celsius, { from: -1, to: 45, unit: '°C' })
  const bar = (formed: number, end: keyof Span): number =>
    // What dissolves less presses more.
    BAR_PER_ATM * partialPressure(formed, celsius, headspace, SOLIDS[OPPOSITE[end]])
  const ceilingOf = (end: keyof Span) => gasFromSugar(sugar[end])
  const madeBy = (end: keyof Span): number => {
    const all = ceilingOf(end)
    return days === null ? all : Math.min(all, (volumesADay(end, celsius) * days) / VOLUME)
  }
  const spanOf = (madeAt: (end: keyof Span) => number): Span => ({
    low: bar(madeAt('low'), 'low'),
    mid: bar(madeAt('mid'), 'mid'),
    high: bar(madeAt('high'), 'high')
  })
  const now = spanOf(madeBy)
  const ceiling = spanOf(ceilingOf)
  const limit = BOTTLES[bottle].hazard
  return { now, ceiling, limit, says: now.high > limit ? 'could-burst-now' : 'not-shown-below' }
}
