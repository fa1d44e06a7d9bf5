import type { AcidReading } from '../../science/course.ts'
import type { PhInstrument } from '../../science/mix.ts'
import type { AmountOf, Dimension, UnitOf } from '../../science/units.ts'
import type { TextKey } from '../text-key.ts'

/** The keys of a group of the workbench's words. */
export type KeyUnder<Group extends string> = TextKey extends infer Key
  ? Key extends `ui:workbench.${Group}.${infer Name}`
    ? Name
    : never
  : never

/** The inputs that there are words for, under `ui:workbench.fields`. */
export type InputId = KeyUnder<'fields'>
/** The options that there are words for, under `ui:workbench.options`. */
export type OptionId = KeyUnder<'options'>

/** One input of a calculator: an option of the command, and a field of the workbench. */
export type CalculatorInput =
  | AmountInput<Dimension>
  | PlainNumberInput
  | ChoiceInput<OptionId>
  | ReadingsInput

interface Common {
  readonly id: InputId
  /** What the field of the workbench begins with. */
  readonly start: string
  /** What counts where the command is told nothing; without it nothing is known, or the command asks for it. */
  readonly otherwise?: string
  /** Where a slider goes along with the field, in the first unit. */
  readonly slider?: { readonly from: number; readonly to: number; readonly step: number }
}

export interface AmountInput<D extends Dimension> extends Common {
  readonly kind: 'amount'
  readonly dimensions: readonly D[]
  /** The units that the workbench offers, the first of them first. */
  readonly units: readonly UnitOf<D>[]
}

/** A number in the one unit that it can be in. */
export interface PlainNumberInput extends Common {
  readonly kind: 'number'
  readonly unit: NumberUnit
  /** No field of the workbench: `start` counts there. */
  readonly isCommandAlone?: true
}

/** Units that stand for themselves; a count has none. */
export type NumberUnit = 'pH' | 'days' | '%' | 'g/L' | 'ppm' | '°Bx' | ''

export interface ChoiceInput<N extends OptionId> extends Common {
  readonly kind: 'choice'
  readonly options: readonly N[]
  readonly start: N
  readonly otherwise?: N
  /** What a field offers for leaving it out; the command leaves the option out. */
  readonly leftOut?: N
}

/** Readings of acidity: a line for each in a field, one behind the other on a command line. */
export interface ReadingsInput extends Common {
  readonly kind: 'readings'
}

/** The inputs of one calculator as somebody gave them. Each throws where what was given cannot be read. */
export interface GivenInputs {
  number(input: PlainNumberInput): number
  /** Null where it is left out. */
  maybe(input: PlainNumberInput): number | null
  amount<D extends Dimension>(input: AmountInput<D>): AmountOf<D>
  choice<N extends OptionId>(input: ChoiceInput<N>): N
  /** By their days. */
  readings(input: ReadingsInput, instrument: PhInstrument | undefined): readonly AcidReading[]
}
