import type { ComponentChildren } from 'preact'
import { useRef } from 'preact/hooks'
import { readDecimal } from '../science/decimal.ts'
import type { Interval } from '../tree/answers.ts'
import type { MeasureObservation } from '../tree/observation.ts'
import { answerLabel } from '../words/tree-texts.ts'
import { AnswerName } from './answer-name.tsx'
import { HintButton, HintText, useAnswerHint } from './hint.tsx'
import { KEY_UNSURE, KeyedAnswer } from './key.tsx'
import { NumberField, type TypedMeasure, useTypedMeasure } from './number-field.tsx'
import { useSetting } from './setting.tsx'
import { Strip } from './strip.tsx'
import type { TypedUnit } from './units.ts'

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
  const { units, fields, setFields, fault, read } = useTypedMeasure(
    observation,
    before,
    reading => `${reading}`
  )
  const { typed, unit, instrument } = fields
  const change = (changed: Partial<TypedMeasure>) => setFields({ ...fields, ...changed })
  const field = useRef<HTMLInputElement>(null)
  const hint = useAnswerHint(observation.id, 'unsure')
  const id = `measure-${observation.id}`
  const unitName = (one: TypedUnit) => words.t(`ui:unit-names.${one.id}`)
  const needsInstrument = observation.instruments.length > 1

  const submit = (event: Event) => {
    event.preventDefault()
    const answer = read(fields)
    if (answer === null) field.current?.focus()
    else onAnswer(answer)
  }

  return (
    <form class="measure" onSubmit={submit} noValidate>
      {needsInstrument && (
        <Pills
          look="pills"
          legend={<legend>{words.t('ui:prompts.instrument')}</legend>}
          name={`instrument-${observation.id}`}
          names={[
            ...observation.instruments.map(
              ({ id }) => [id, words.t(`observations:${observation.id}.instruments.${id}`)] as const
            ),
            ['', words.t('ui:prompts.instrument-unknown')]
          ]}
          value={instrument}
          onChange={picked => change({ instrument: picked })}
        />
      )}
      {observation.unit === 'ph' && instrument.endsWith('strip') && (
        <Strip
          wide={instrument === 'wide-strip'}
          value={readDecimal(typed)}
          onPick={ph => change({ typed: `${ph}` })}
        />
      )}
      <NumberField
        id={id}
        look="measure-field"
        label={words.t(`ui:prompts.number-${observation.unit}`)}
        typed={typed}
        fault={fault}
        field={field}
        onTyped={text => change({ typed: text })}
      >
        {units.length === 1 ? (
          <span class="measure-unit">{unitName(unit)}</span>
        ) : (
          <Pills
            look="unit-switch"
            legend={<legend class="visually-hidden">{words.t('ui:prompts.unit')}</legend>}
            name="unit"
            names={units.map(one => [one.id, unitName(one)])}
            value={unit.id}
            onChange={picked => change({ unit: units.find(one => one.id === picked) ?? unit })}
          />
        )}
      </NumberField>
      <div class="actions">
        <button type="submit" class="primary">
          {words.t('ui:go-on')}
        </button>
        <KeyedAnswer
          look="secondary"
          answer="unsure"
          shortcut={KEY_UNSURE}
          describedBy={fromMemory ? undefined : hint.id}
          onPress={() => onAnswer('unsure')}
        >
          <AnswerName observation={observation.id} answer="unsure" />
        </KeyedAnswer>
        {!fromMemory && (
          <>
            <HintButton about={answerLabel(words, observation.id, 'unsure')} hint={hint} />
            <HintText hint={hint} look="actions-hint" />
          </>
        )}
      </div>
    </form>
  )
}

/** A choice of a few short names. */
function Pills({
  look,
  legend,
  name,
  names,
  value,
  onChange
}: {
  look: string
  legend: ComponentChildren
  name: string
  /** By their ids. */
  names: readonly (readonly [id: string, name: string])[]
  value: string
  onChange: (id: string) => void
}) {
  return (
    <fieldset class={look}>
      {legend}
      {names.map(([id, text]) => (
        <label key={id} class="pill">
          <input
            type="radio"
            name={name}
            value={id}
            checked={value === id}
            onChange={() => onChange(id)}
          />
          <span>{text}</span>
        </label>
      ))}
    </fieldset>
  )
}
