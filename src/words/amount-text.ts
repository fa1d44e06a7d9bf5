import { amount, inUnit } from '../science/units.ts'
import type { Words } from './words.ts'

/** What a kitchen measures with, largest first. */
const KITCHEN = ['gal', 'cup', 'tbsp', 'tsp'] as const

/** A volume in mL as a kitchen measures it, with the milliliters beside it. */
export function volumeText(words: Words, milliliters: number): string {
  const volume = amount(milliliters, 'mL')
  const unit = KITCHEN.find(each => inUnit(volume, each) >= 0.5) ?? 'tsp'
  const value = Number(inUnit(volume, unit).toPrecision(3))
  return `${value} ${words.t(`ui:unit-names.${unit}`)} (${Math.round(milliliters)} mL)`
}
