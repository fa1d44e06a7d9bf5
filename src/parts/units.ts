import { amount, celsiusOf, fahrenheitOf, inUnit, type UnitOf, WEEK } from '../science/units.ts'
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

const volume = ([unit, id]: readonly [UnitOf<'volume'>, TypedUnit['id']]): TypedUnit => ({
  id,
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
  day: [
    same('days'),
    {
      id: 'weeks',
      toMeasure: x => Math.floor(x * WEEK),
      fromMeasure: x => x / WEEK
    }
  ],
  fahrenheit: [
    same('fahrenheit'),
    { id: 'celsius', toMeasure: fahrenheitOf, fromMeasure: celsiusOf }
  ],
  percent: [same('percent')],
  milliliter: (
    [
      ...(['cup', 'quart', 'gal', 'floz', 'tbsp', 'tsp'] as const).map(
        unit => [unit, unit] as const
      ),
      ['mL', 'ml'],
      ['L', 'l']
    ] as const
  ).map(volume),
  gram: (['g', 'oz', 'lb', 'kg'] as const).map(mass),
  'gram-per-liter': [same('per-liter')],
  // Nobody reads it off anything.
  'ph-difference': []
}
