import type { ComponentChildren, Ref } from 'preact'
import { useState } from 'preact/hooks'
import { readDecimal } from '../science/decimal.ts'
import type { Interval } from '../tree/answers.ts'
import { at } from '../tree/must.ts'
import type { MeasureObservation } from '../tree/observation.ts'
import { measured } from '../tree/reading.ts'
import type { Words } from '../words/words.ts'
import { useSetting } from './setting.tsx'
import { TYPED_UNITS, type TypedUnit } from './units.ts'

/** What stands in the fields of a measure. */
export interface TypedMeasure {
  readonly typed: string
  readonly unit: TypedUnit
  /** Its id; empty where nobody knows. */
  readonly instrument: string
}

/**
 * A measure as it is typed: what stands in its fields, what is wrong with it, and how it is read. `read`
 * gives null where no number can be told, and says so in `fault`.
 */
export function useTypedMeasure(
  observation: MeasureObservation,
  before: Interval | undefined,
  shown: (reading: number, unit: TypedUnit) => string
) {
  const { words } = useSetting()
  const units = TYPED_UNITS[observation.unit]
  const [fields, setFields] = useState<TypedMeasure>(() => {
    const unit = at(units, 0)
    const typed = before === undefined ? '' : shown(before.reading, unit)
    return { typed, unit, instrument: before?.instrument ?? '' }
  })
  const [fault, setFault] = useState<string | null>(null)
  const read = ({ typed, unit, instrument }: TypedMeasure): Interval | null => {
    const number = readDecimal(typed)
    const value = number === null ? null : unit.toMeasure(number)
    const found = measureFault(value, observation, unit, words.t)
    setFault(found)
    if (found !== null || value === null) return null
    return measured(observation, value, instrument === '' ? undefined : instrument)
  }
  return { units, fields, setFields, fault, setFault, read }
}

/** What is wrong with a number that somebody typed for a measure, in one sentence; null when nothing is. */
function measureFault(
  value: number | null,
  { span, unit }: MeasureObservation,
  typedIn: TypedUnit,
  t: Words['t']
): string | null {
  if (value === null || !Number.isFinite(value)) return t(`ui:errors.not-a-number-${unit}`)
  if (unit === 'day' && !Number.isInteger(value)) return t('ui:errors.not-whole')
  if (value >= span.from && value <= span.to) return null
  const rounded = (limit: number) => Number(typedIn.fromMeasure(limit).toPrecision(3))
  return t('ui:errors.out-of-span', { from: rounded(span.from), to: rounded(span.to) })
}

/** A field for a number, with what belongs beside it, and what is wrong with it underneath. */
export function NumberField({
  id,
  look,
  label,
  typed,
  fault,
  field,
  onTyped,
  children
}: {
  id: string
  look: string
  label: ComponentChildren
  typed: string
  /** Null when nothing is wrong; empty where it is said elsewhere. */
  fault: string | null
  field?: Ref<HTMLInputElement>
  onTyped: (typed: string) => void
  children: ComponentChildren
}) {
  return (
    <div class={look}>
      <label for={id}>{label}</label>
      <input
        id={id}
        ref={field ?? null}
        inputMode="decimal"
        autocomplete="off"
        value={typed}
        aria-invalid={fault !== null}
        aria-describedby={fault ? `${id}-error` : undefined}
        onInput={event => onTyped(event.currentTarget.value)}
      />
      {children}
      {fault && (
        <p class="error" id={`${id}-error`}>
          {fault}
        </p>
      )}
    </div>
  )
}
