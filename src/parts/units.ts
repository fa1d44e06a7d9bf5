import { amount, inUnit, type UnitOf } from '../science/units.ts'
import type { Unit } from '../tree/observation.ts'

/** A unit that a person may type in, and how it turns into the measure's own. */
export interface TypedUnit {
  /** Its words are `ui:unit-names.<id>`. */
  readonly id:
    | 'ph'
    | 'days'
    | 'weeks'
    | 'fahrenheit'
    | 'celsius'
    | 'percent'
    | 'per-liter'
    | Lowercase<UnitOf<'volume'> | UnitOf<'mass'>>
  readonly toMeasure: (typed: number) => number
  readonly fromMeasure: (value: number) => number
}

const volume = (unit: UnitOf<'volume'>): TypedUnit => ({
  id: unit.toLowerCase() as Lowercase<typeof unit>,
  toMeasure: x => inUnit(amount(x, unit), 'mL'),
  fromMeasure: x => inUnit(amount(x, 'mL'), unit)
})
const mass = (unit: UnitOf<'mass'>): TypedUnit => ({
  id: unit,
  toMeasure: x => inUnit(amount(x, unit), 'g'),
  fromMeasure: x => inUnit(amount(x, 'g'), unit)
})
const same = (id: TypedUnit['id']): TypedUnit => ({ id, toMeasure: x => x, fromMeasure: x => x })

/** The units offered for each measure, its own first. */
export const TYPED_UNITS: Readonly<Record<Unit, readonly TypedUnit[]>> = {
  ph: [same('ph')],
  day: [same('days'), { id: 'weeks', toMeasure: x => Math.floor(x * 7), fromMeasure: x => x / 7 }],
  fahrenheit: [
    same('fahrenheit'),
    // Exact by definition: 0 °C is 32 °F and a kelvin is 1.8 degrees Fahrenheit (NIST SP 811).
    {
      id: 'celsius',
      toMeasure: x => Math.round((x * 1.8 + 32) * 10) / 10,
      fromMeasure: x => Math.round(((x - 32) / 1.8) * 10) / 10
    }
  ],
  percent: [same('percent')],
  milliliter: (['cup', 'quart', 'gal', 'floz', 'tbsp', 'tsp', 'mL', 'L'] as const).map(volume),
  gram: (['g', 'oz', 'lb', 'kg'] as const).map(mass),
  'gram-per-liter': [same('per-liter')],
  // Nobody reads it off anything.
  'ph-difference': []
}

/** A number as people type it: a comma counts as a point; null when it is none. */
export function readTyped(text: string): number | null {
  const plain = text.trim().replace(',', '.')
  return /^\d+(\.\d+)?$/.test(plain) ? Number(plain) : null
}
