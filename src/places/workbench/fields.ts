import { readDecimal } from '../../science/decimal.ts'
import { amountIn, isUnitName, type UnitName } from '../../science/units.ts'
import type { Calculator } from '../../words/reckoned/calculators.ts'
import type {
  CalculatorInput,
  GivenInputs,
  InputId,
  NumberUnit
} from '../../words/reckoned/inputs.ts'
import { readPasted } from '../../words/reckoned/pasted-readings.ts'

/** What stands in the fields, as typed: a field's id, and its id with `-unit` for the unit picked. */
export type TypedFields = Readonly<Record<string, string>>

/** A field that needs a number has none; the page names the field. */
export class NotANumber extends Error {
  readonly field: InputId

  constructor(field: InputId) {
    super(`${field} is no number`)
    this.field = field
  }
}

/** The inputs of a calculator that are fields of the page. */
export const fieldsOf = ({ inputs }: Calculator): readonly CalculatorInput[] =>
  inputs.filter(input => !(input.kind === 'number' && input.isCommandAlone))

export type FieldUnit = UnitName | Exclude<NumberUnit, ''>

/** The units that a field may be typed in, the first of them first; none for a plain number. */
export function unitsOf(input: CalculatorInput): readonly FieldUnit[] {
  if (input.kind === 'amount') return input.units
  return input.kind === 'number' && input.unit !== '' ? [input.unit] : []
}

/** The values that a calculator begins with, and those of a link in their place where they can be. */
export function startValues(calculator: Calculator, linked: URLSearchParams): TypedFields {
  const pairs = fieldsOf(calculator).flatMap(input => {
    const { id, start } = input
    const typed = linked.get(id) ?? start
    const isOffered = input.kind !== 'choice' || input.options.some(option => option === typed)
    const value = [id, isOffered ? typed : start] as const
    const units = unitsOf(input)
    const [first] = units
    if (first === undefined) return [value]
    const unit = units.find(each => each === linked.get(`${id}-unit`)) ?? first
    return [value, [`${id}-unit`, unit] as const]
  })
  return Object.fromEntries(pairs)
}

/** The inputs of a calculator as its fields give them. Each throws NotANumber where a number is none. */
export function givenIn(values: TypedFields): GivenInputs {
  const number = (id: InputId, text: string): number => {
    const found = readDecimal(text)
    if (found === null) throw new NotANumber(id)
    return found
  }
  return {
    number: ({ id, start }) => number(id, values[id] ?? start),
    maybe: ({ id }) => {
      const text = values[id] ?? ''
      return text.trim() === '' ? null : number(id, text)
    },
    amount: ({ id, dimensions, units, start }) => {
      const unit = values[`${id}-unit`] ?? units[0] ?? ''
      const found = isUnitName(unit)
        ? amountIn(dimensions, number(id, values[id] ?? start), unit)
        : null
      if (found === null) throw new RangeError(`${id} is not measured in ${unit}`)
      return found
    },
    choice: ({ id, options, start }) => options.find(option => option === values[id]) ?? start,
    readings: ({ id, start }, instrument) => readPasted(values[id] ?? start, instrument).readings
  }
}
