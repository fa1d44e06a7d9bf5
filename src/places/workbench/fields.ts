import { readDecimal } from '../../science/decimal.ts'
import {
  type Amount,
  amount,
  type Dimension,
  type UnitName,
  type UnitOf
} from '../../science/units.ts'
import type { TextKey } from '../../words/text-key.ts'

/** One input of a calculator. Its words are `ui:workbench.fields.<id>`. */
export type Field =
  | {
      readonly kind: 'number'
      readonly id: FieldId
      /** The units offered, the first of them first; none for a plain number. */
      readonly units: readonly UnitChoice[]
      readonly start: string
      /** Where a slider goes along with it, in the first unit. */
      readonly slider?: { readonly from: number; readonly to: number; readonly step: number }
    }
  | {
      readonly kind: 'choice'
      readonly id: FieldId
      /** Their words are `ui:workbench.options.<option>`. */
      readonly options: readonly OptionId[]
      readonly start: OptionId
    }
  | { readonly kind: 'text'; readonly id: FieldId; readonly start: string }

/** Units beside those of `science/units.ts`: they stand for themselves. */
export type UnitChoice = UnitName | 'pH' | 'days' | '%' | 'g/L' | 'ppm' | '°Bx'

export type FieldId =
  | 'starter'
  | 'batch'
  | 'starter-ph'
  | 'instrument'
  | 'starter-kind'
  | 'start-ph'
  | 'at'
  | 'readings'
  | 'day'
  | 'sugar'
  | 'days'
  | 'headspace'
  | 'bottle'
  | 'label'
  | 'target'
  | 'water'
  | 'additive'
  | 'salt'
  | 'salt-kind'
  | 'vegetables'
  | 'for'
  | 'before'
  | 'after'
  | 'both'
  | 'first'
  | 'second'
  | 'neither'
/** The options there are words for. */
export type OptionId = KeyUnder<'options'>
/** The keys of a group of the workbench's words. */
export type KeyUnder<Group extends string> = TextKey extends infer Key
  ? Key extends `ui:workbench.${Group}.${infer Name}`
    ? Name
    : never
  : never

/** What stands in the fields, as typed: a field's id, and its id with `-unit` for the unit picked. */
export type TypedFields = Readonly<Record<string, string>>

/** A field that needs a number has none; the page names the field. */
export class NotANumber extends Error {
  readonly field: FieldId

  constructor(field: FieldId) {
    super(`${field} is no number`)
    this.field = field
  }
}

/** The values that a calculator begins with, and those of a link in their place where they can be. */
export function startValues(fields: readonly Field[], linked: URLSearchParams): TypedFields {
  const pairs = fields.flatMap(field => {
    const told = linked.get(field.id)
    const value =
      field.kind === 'choice' && !field.options.includes(told as OptionId) ? field.start : told
    const unit = linked.get(`${field.id}-unit`)
    const units: readonly string[] = field.kind === 'number' ? field.units : []
    return [
      [field.id, value ?? field.start] as const,
      ...(units.length > 0
        ? [
            [
              `${field.id}-unit`,
              unit !== null && units.includes(unit) ? unit : (units[0] ?? '')
            ] as const
          ]
        : [])
    ]
  })
  return Object.fromEntries(pairs)
}

/** The number in a field. @throws NotANumber */
export function numberIn(values: TypedFields, id: FieldId): number {
  const number = readDecimal(values[id] ?? '')
  if (number === null) throw new NotANumber(id)
  return number
}

/** The number in a field that may stay empty; null then. @throws NotANumber */
export const maybeIn = (values: TypedFields, id: FieldId): number | null =>
  (values[id] ?? '').trim() === '' ? null : numberIn(values, id)

/** The amount in a field, by the unit picked beside it. @throws NotANumber */
export function amountIn<D extends Dimension>(values: TypedFields, id: FieldId): Amount<D> {
  const unit = values[`${id}-unit`] as UnitOf<D>
  return amount(numberIn(values, id), unit) as unknown as Amount<D>
}

export const choiceIn = <N extends string>(values: TypedFields, id: FieldId): N =>
  (values[id] ?? '') as N
