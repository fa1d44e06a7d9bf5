import type { Words } from './words.ts'

/** Milliliters in each measure that a kitchen has, largest first (NIST Handbook 44, appendix C). */
const KITCHEN = [
  ['gal', 3785.411784],
  ['cup', 236.5882365],
  ['tbsp', 14.78676478125],
  ['tsp', 4.92892159375]
] as const

/** A volume in mL as a kitchen measures it, with the milliliters beside it. */
export function volumeText(words: Words, milliliters: number): string {
  const [name, each] = KITCHEN.find(([, one]) => milliliters >= one / 2) ?? KITCHEN[3]
  const value = Number((milliliters / each).toPrecision(3))
  const unit = words.t(`ui:unit-names.${name}`)
  return `${value} ${unit} (${Math.round(milliliters)} mL)`
}
