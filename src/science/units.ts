/** What is measured: an amount of one cannot be added to an amount of another. */
export type Dimension = 'volume' | 'mass' | 'temperature' | 'pressure'

/** An amount with its dimension, kept in one unit: mL, g, °C or kPa. */
export interface Amount<D extends Dimension> {
  readonly dimension: D
  /** In mL, g, °C or kPa. Read it with `inUnit`. */
  readonly base: number
}

interface Scale<D extends Dimension> {
  readonly dimension: D
  /** How many of the base unit one is. */
  readonly factor: number
  /** What 0 of it is in the base unit. */
  readonly zero?: number
}

/** A week in days. */
export const WEEK = 7
/** A month in days: people count months by the calendar and say them roundly. */
export const MONTH = 30
/** A year in days, as the trees count it. */
export const YEAR = 365

// Exact by definition: 0 °C is 32 °F and a kelvin is 1.8 degrees Fahrenheit (NIST SP 811).
const FAHRENHEIT_A_KELVIN = 1.8
const FREEZING_FAHRENHEIT = 32

// A US gallon is 231 cubic inches and an inch is 2.54 cm, both exactly (NIST Handbook 44, appendix C).
const GALLON = 231 * 2.54 ** 3

/**
 * Every unit, with exact factors. Sources: NIST Handbook 44 appendix C (US customary volume, avoirdupois
 * mass); the imperial gallon is 4.54609 L by definition; a pound-force per square inch from the pound,
 * standard gravity 9.80665 m/s² and the inch; 1 atm is 101.325 kPa.
 */
export const UNITS = {
  mL: { dimension: 'volume', factor: 1 },
  L: { dimension: 'volume', factor: 1000 },
  tsp: { dimension: 'volume', factor: GALLON / 768 },
  tbsp: { dimension: 'volume', factor: GALLON / 256 },
  floz: { dimension: 'volume', factor: GALLON / 128 },
  cup: { dimension: 'volume', factor: GALLON / 16 },
  pint: { dimension: 'volume', factor: GALLON / 8 },
  quart: { dimension: 'volume', factor: GALLON / 4 },
  gal: { dimension: 'volume', factor: GALLON },
  'imperial-gal': { dimension: 'volume', factor: 4546.09 },
  g: { dimension: 'mass', factor: 1 },
  kg: { dimension: 'mass', factor: 1000 },
  oz: { dimension: 'mass', factor: 453.59237 / 16 },
  lb: { dimension: 'mass', factor: 453.59237 },
  C: { dimension: 'temperature', factor: 1 },
  F: {
    dimension: 'temperature',
    factor: 1 / FAHRENHEIT_A_KELVIN,
    zero: -FREEZING_FAHRENHEIT / FAHRENHEIT_A_KELVIN
  },
  kPa: { dimension: 'pressure', factor: 1 },
  bar: { dimension: 'pressure', factor: 100 },
  psi: { dimension: 'pressure', factor: (0.45359237 * 9.80665) / 0.0254 ** 2 / 1000 },
  atm: { dimension: 'pressure', factor: 101.325 }
} as const satisfies Record<string, Scale<Dimension>>

export type UnitName = keyof typeof UNITS
/** The units of one dimension. */
export type UnitOf<D extends Dimension> = {
  [U in UnitName]: (typeof UNITS)[U]['dimension'] extends D ? U : never
}[UnitName]

/** An amount: `amount(2, 'cup')`. */
export function amount<U extends UnitName>(
  value: number,
  unit: U
): Amount<(typeof UNITS)[U]['dimension']> {
  const { dimension, factor, zero = 0 }: Scale<(typeof UNITS)[U]['dimension']> = UNITS[unit]
  return { dimension, base: value * factor + zero }
}

/** An amount of one of some dimensions, which tells which of them it is. */
export type AmountOf<D extends Dimension> = D extends Dimension ? Amount<D> : never

export const isUnitName = (text: string): text is UnitName => Object.hasOwn(UNITS, text)

/** An amount in a unit that somebody picked or wrote; null where it measures none of the dimensions. */
export function amountIn<D extends Dimension>(
  dimensions: readonly D[],
  value: number,
  unit: UnitName
): AmountOf<D> | null {
  const { dimension, base } = amount(value, unit)
  const isOne = dimensions.some(one => one === dimension)
  // The unit decides at run time, and it has just been held against the dimensions.
  return isOne ? ({ dimension, base } as unknown as AmountOf<D>) : null
}

/** An amount as a number of one of its own units: `inUnit(amount(2, 'cup'), 'mL')`. */
export function inUnit<D extends Dimension>({ base }: Amount<D>, unit: UnitOf<D>): number {
  const { factor, zero = 0 }: Scale<Dimension> = UNITS[unit]
  return (base - zero) / factor
}

/** The sum of two amounts of one dimension. Temperatures have none. */
export function sum<D extends Exclude<Dimension, 'temperature'>>(
  a: Amount<D>,
  b: Amount<NoInfer<D>>
): Amount<D> {
  return { dimension: a.dimension, base: a.base + b.base }
}

const tenths = (value: number): number => Math.round(value * 10) / 10

/** Degrees Fahrenheit of degrees Celsius, to a tenth: no kitchen thermometer shows more. */
export const fahrenheitOf = (celsius: number): number =>
  tenths(celsius * FAHRENHEIT_A_KELVIN + FREEZING_FAHRENHEIT)

/** Degrees Celsius of degrees Fahrenheit, to a tenth. */
export const celsiusOf = (fahrenheit: number): number =>
  tenths((fahrenheit - FREEZING_FAHRENHEIT) / FAHRENHEIT_A_KELVIN)
