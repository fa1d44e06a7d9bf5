import { useState } from 'preact/hooks'
import { readDecimal } from '../science/decimal.ts'
import { type Answer, isInterval } from '../tree/answers.ts'
import type { ChoiceObservation, MeasureObservation } from '../tree/observation.ts'
import { measured } from '../tree/tell.ts'
import { answerLabel } from '../words/tree-texts.ts'
import { measureFault } from './measure-fault.ts'
import { useSetting } from './setting.tsx'
import { TYPED_UNITS, type TypedUnit } from './units.ts'

/** One plain quantity that something is worked out from; left empty it is not known. */
export function InputField({
  id,
  before,
  onChange
}: {
  id: string
  before: Answer | undefined
  /** What is known now, or null; and whether what was typed cannot be right. */
  onChange: (answer: Answer | null, isFaulty: boolean) => void
}) {
  const { tree } = useSetting()
  const observation = tree.observations[id]
  if (observation?.kind === 'choice') {
    return <ChoiceField observation={observation} before={before} onChange={onChange} />
  }
  if (observation?.kind === 'measure') {
    return <NumberField observation={observation} before={before} onChange={onChange} />
  }
  return null
}

type OnChange = (answer: Answer | null, isFaulty: boolean) => void

function ChoiceField({
  observation: { id, answers },
  before,
  onChange
}: {
  observation: ChoiceObservation
  before: Answer | undefined
  onChange: OnChange
}) {
  const { words } = useSetting()
  return (
    <div class="input-field">
      <label for={`input-${id}`}>{words.t(`observations:${id}.ask`)}</label>
      <select
        id={`input-${id}`}
        value={typeof before === 'string' ? before : 'unsure'}
        onChange={event => onChange(event.currentTarget.value, false)}
      >
        {['unsure', ...answers.map(answer => answer.id)].map(answer => (
          <option key={answer} value={answer}>
            {answerLabel(words, id, answer)}
          </option>
        ))}
      </select>
    </div>
  )
}

function NumberField({
  observation,
  before,
  onChange
}: {
  observation: MeasureObservation
  before: Answer | undefined
  onChange: OnChange
}) {
  const { words } = useSetting()
  const { id, instruments } = observation
  const units = TYPED_UNITS[observation.unit]
  const told = before !== undefined && isInterval(before) ? before : undefined
  const [unit, setUnit] = useState(units[0] as TypedUnit)
  const [typed, setTyped] = useState(told === undefined ? '' : shown(unit, told.reading))
  const [instrument, setInstrument] = useState(told?.instrument ?? '')
  const [fault, setFault] = useState<string | null>(null)

  const change = (text: string, as: TypedUnit, by: string) => {
    setTyped(text)
    setUnit(as)
    setInstrument(by)
    if (text.trim() === '') {
      setFault(null)
      onChange(null, false)
      return
    }
    const number = readDecimal(text)
    const value = number === null ? null : as.toMeasure(number)
    const found = measureFault(value, observation, as, words.t)
    setFault(found)
    if (found !== null || value === null) onChange(null, true)
    else onChange(measured(observation, value, by === '' ? undefined : by), false)
  }

  return (
    <div class="input-field">
      <label for={`input-${id}`}>{words.t(`observations:${id}.ask`)}</label>
      <input
        id={`input-${id}`}
        inputMode="decimal"
        autocomplete="off"
        value={typed}
        aria-invalid={fault !== null}
        aria-describedby={fault === null ? undefined : `input-${id}-error`}
        onInput={event => change(event.currentTarget.value, unit, instrument)}
      />
      <UnitPick
        name={id}
        units={units}
        unit={unit}
        onChange={as => change(typed, as, instrument)}
      />
      {instruments.length > 1 && (
        <select
          aria-label={words.t('ui:prompts.instrument')}
          value={instrument}
          onChange={event => change(typed, unit, event.currentTarget.value)}
        >
          <option value="">{words.t('ui:prompts.instrument-unknown')}</option>
          {instruments.map(one => (
            <option key={one.id} value={one.id}>
              {words.t(`observations:${id}.instruments.${one.id}`)}
            </option>
          ))}
        </select>
      )}
      {fault !== null && (
        <p class="error" id={`input-${id}-error`}>
          {fault}
        </p>
      )}
    </div>
  )
}

function UnitPick({
  name,
  units,
  unit,
  onChange
}: {
  name: string
  units: readonly TypedUnit[]
  unit: TypedUnit
  onChange: (unit: TypedUnit) => void
}) {
  const { words } = useSetting()
  if (units.length === 1) return <span>{words.t(`ui:unit-names.${unit.id}`)}</span>
  return (
    <select
      aria-label={words.t('ui:prompts.unit')}
      id={`unit-${name}`}
      value={unit.id}
      onChange={event => {
        const found = units.find(one => one.id === event.currentTarget.value)
        if (found) onChange(found)
      }}
    >
      {units.map(one => (
        <option key={one.id} value={one.id}>
          {words.t(`ui:unit-names.${one.id}`)}
        </option>
      ))}
    </select>
  )
}

const shown = (unit: TypedUnit, value: number): string =>
  `${Number(unit.fromMeasure(value).toPrecision(4))}`
