import { readSigned } from '../science/decimal.ts'
import {
  type AmountOf,
  amountIn,
  type Dimension,
  isUnitName,
  UNITS,
  type UnitName
} from '../science/units.ts'
import { BadUse } from './bad-use.ts'

/** Units as people write them, beside their own names. */
const WRITTEN: Readonly<Record<string, UnitName>> = {
  ml: 'mL',
  l: 'L',
  liter: 'L',
  liters: 'L',
  cups: 'cup',
  c: 'cup',
  gallon: 'gal',
  gallons: 'gal',
  quarts: 'quart',
  qt: 'quart',
  pints: 'pint',
  pt: 'pint',
  'fl-oz': 'floz',
  tbsps: 'tbsp',
  tablespoon: 'tbsp',
  tablespoons: 'tbsp',
  tsps: 'tsp',
  teaspoon: 'tsp',
  teaspoons: 'tsp',
  grams: 'g',
  gram: 'g',
  pounds: 'lb',
  pound: 'lb',
  lbs: 'lb',
  ounces: 'oz',
  ounce: 'oz',
  f: 'F',
  '°f': 'F',
  '°c': 'C',
  celsius: 'C',
  fahrenheit: 'F'
}

/** A number of a command line, with the unit written behind it. @throws BadUse where there is none. */
function split(option: string, text: string): { value: number; unit: string } {
  const [, number = '', unit = ''] = /^\s*(-?\d+(?:[.,]\d+)?)\s*([^\d\s].*)?$/.exec(text) ?? []
  const value = readSigned(number)
  if (value === null) throw new BadUse(`\`${option}\` is \`${text}\`: write a number and its unit.`)
  return { value, unit: unit.trim() }
}

/** An amount of one of the dimensions, such as `2cup`. @throws BadUse for a unit of another, or none. */
export function readAmount<D extends Dimension>(
  option: string,
  text: string,
  dimensions: readonly D[],
  example: string
): AmountOf<D> {
  const { value, unit } = split(option, text)
  const name = WRITTEN[unit.toLowerCase()] ?? (isUnitName(unit) ? unit : null)
  const found = name === null ? null : amountIn(dimensions, value, name)
  if (found !== null) return found
  const units = Object.entries(UNITS)
    .filter(([, scale]) => dimensions.some(dimension => dimension === scale.dimension))
    .map(([each]) => each)
  throw new BadUse(
    `\`${option}\` is \`${text}\`: write it like \`${example}\`. Units: ${units.join(', ')}.`
  )
}

/** A number in one unit that may be written behind it, such as `20g/L` or `20`. @throws BadUse for others. */
export function readNumber(option: string, text: string, unit: string): number {
  const { value, unit: written } = split(option, text)
  if (written === '' || written.toLowerCase() === unit.toLowerCase()) return value
  throw new BadUse(`\`${option}\` is \`${text}\`: write it like \`20${unit}\`.`)
}

/** One of several names. @throws BadUse for another. */
export function readName<N extends string>(option: string, text: string, names: readonly N[]): N {
  const found = names.find(name => name === text)
  if (found === undefined) {
    throw new BadUse(`\`${option}\` is \`${text}\`: choose one of ${names.join(', ')}.`)
  }
  return found
}

/** The value of an option that has to be there. @throws BadUse where it is not. */
export function needed(option: string, text: string | undefined, example: string): string {
  if (text === undefined)
    throw new BadUse(`\`${option}\` is missing. Write it like \`${option} ${example}\`.`)
  return text
}
