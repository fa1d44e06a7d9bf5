import { useRef, useState } from 'preact/hooks'
import { readDecimal } from '../science/decimal.ts'
import type { Interval } from '../tree/answers.ts'
import type { MeasureObservation } from '../tree/observation.ts'
import { measured } from '../tree/tell.ts'
import { answerHint } from '../words/tree-texts.ts'
import { AnswerName } from './answer-name.tsx'
import { KEY_UNSURE, Key } from './key.tsx'
import { measureFault } from './measure-fault.ts'
import { useSetting } from './setting.tsx'
import { Strip } from './strip.tsx'
import { TYPED_UNITS, type TypedUnit } from './units.ts'

/** A number with its unit and instrument, or "I don't know". */
export function MeasureAnswers({
  observation,
  told,
  onAnswer
}: {
  observation: MeasureObservation
  told: Interval | 'unsure' | undefined
  onAnswer: (answer: Interval | 'unsure') => void
}) {
  const { words, fromMemory } = useSetting()
  const before = typeof told === 'object' ? told : undefined
  const units = TYPED_UNITS[observation.unit]
  const [unit, setUnit] = useState(units[0] as TypedUnit)
  const [typed, setTyped] = useState(before === undefined ? '' : `${before.reading}`)
  const [instrument, setInstrument] = useState(before?.instrument ?? '')
  const [error, setError] = useState<string | null>(null)
  const field = useRef<HTMLInputElement>(null)
  const id = `measure-${observation.id}`
  const needsInstrument = observation.instruments.length > 1

  const submit = (event: Event) => {
    event.preventDefault()
    const number = readDecimal(typed)
    const value = number === null ? null : unit.toMeasure(number)
    const fault = measureFault(value, observation, unit, words.t)
    setError(fault)
    if (fault !== null || value === null) {
      field.current?.focus()
      return
    }
    onAnswer(measured(observation, value, instrument === '' ? undefined : instrument))
  }

  return (
    <form class="measure" onSubmit={submit} noValidate>
      {needsInstrument && (
        <InstrumentChoice observation={observation} value={instrument} onChange={setInstrument} />
      )}
      {observation.unit === 'ph' && instrument.endsWith('strip') && (
        <Strip
          wide={instrument === 'wide-strip'}
          value={readDecimal(typed)}
          onPick={ph => setTyped(`${ph}`)}
        />
      )}
      <div class="measure-field">
        <label for={id}>{words.t(`ui:prompts.number-${observation.unit}`)}</label>
        <input
          id={id}
          ref={field}
          inputMode="decimal"
          autocomplete="off"
          value={typed}
          aria-invalid={error !== null}
          aria-describedby={error === null ? undefined : `${id}-error`}
          onInput={event => setTyped(event.currentTarget.value)}
        />
        <UnitChoice units={units} unit={unit} onChange={setUnit} />
        {error !== null && (
          <p class="error" id={`${id}-error`}>
            {error}
          </p>
        )}
      </div>
      <div class="actions">
        <button type="submit" class="primary">
          {words.t('ui:go-on')}
        </button>
        <button
          type="button"
          class="secondary"
          data-answer="unsure"
          data-key={KEY_UNSURE}
          aria-describedby={fromMemory ? undefined : `${id}-unsure`}
          onClick={() => onAnswer('unsure')}
        >
          <Key of={KEY_UNSURE} />
          <AnswerName observation={observation.id} answer="unsure" />
        </button>
        {!fromMemory && (
          <p class="actions-hint" id={`${id}-unsure`}>
            {answerHint(words, observation.id, 'unsure')}
          </p>
        )}
      </div>
    </form>
  )
}

function InstrumentChoice({
  observation,
  value,
  onChange
}: {
  observation: MeasureObservation
  value: string
  onChange: (instrument: string) => void
}) {
  const { words } = useSetting()
  const all = [...observation.instruments.map(({ id }) => id), '']
  return (
    <fieldset class="pills">
      <legend>{words.t('ui:prompts.instrument')}</legend>
      {all.map(id => (
        <label key={id} class="pill">
          <input
            type="radio"
            name={`instrument-${observation.id}`}
            value={id}
            checked={value === id}
            onChange={() => onChange(id)}
          />
          <span>
            {id === ''
              ? words.t('ui:prompts.instrument-unknown')
              : words.t(`observations:${observation.id}.instruments.${id}`)}
          </span>
        </label>
      ))}
    </fieldset>
  )
}

function UnitChoice({
  units,
  unit,
  onChange
}: {
  units: readonly TypedUnit[]
  unit: TypedUnit
  onChange: (unit: TypedUnit) => void
}) {
  const { words } = useSetting()
  if (units.length === 1) {
    return <span class="measure-unit">{words.t(`ui:unit-names.${unit.id}`)}</span>
  }
  return (
    <fieldset class="unit-switch">
      <legend class="visually-hidden">{words.t('ui:prompts.unit')}</legend>
      {units.map(one => (
        <label key={one.id} class="pill">
          <input
            type="radio"
            name="unit"
            checked={one.id === unit.id}
            onChange={() => onChange(one)}
          />
          <span>{words.t(`ui:unit-names.${one.id}`)}</span>
        </label>
      ))}
    </fieldset>
  )
}
