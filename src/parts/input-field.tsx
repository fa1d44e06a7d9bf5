import { type Answer, isInterval } from '../tree/answers.ts'
import type { ChoiceObservation, MeasureObservation } from '../tree/observation.ts'
import { answerLabel } from '../words/tree-texts.ts'
import { NumberField, type TypedMeasure, useTypedMeasure } from './number-field.tsx'
import { useSetting } from './setting.tsx'
import { UnitSelect } from './unit-select.tsx'

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
    return <MeasureField observation={observation} before={before} onChange={onChange} />
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

function MeasureField({
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
  const interval = before !== undefined && isInterval(before) ? before : undefined
  const { units, fields, setFields, fault, setFault, read } = useTypedMeasure(
    observation,
    interval,
    (reading, unit) => `${Number(unit.fromMeasure(reading).toPrecision(4))}`
  )
  const change = (changed: Partial<TypedMeasure>) => {
    const next = { ...fields, ...changed }
    setFields(next)
    const isEmpty = next.typed.trim() === ''
    const answer = isEmpty ? null : read(next)
    if (isEmpty) setFault(null)
    onChange(answer, !isEmpty && answer === null)
  }
  return (
    <NumberField
      id={`input-${id}`}
      look="input-field"
      label={words.t(`observations:${id}.ask`)}
      typed={fields.typed}
      fault={fault}
      onTyped={typed => change({ typed })}
    >
      <UnitSelect
        id={`unit-${id}`}
        units={units.map(unit => unit.id)}
        unit={fields.unit.id}
        nameOf={unit => words.t(`ui:unit-names.${unit}`)}
        onChange={picked => change({ unit: units.find(unit => unit.id === picked) ?? fields.unit })}
      />
      {instruments.length > 1 && (
        <select
          aria-label={words.t('ui:prompts.instrument')}
          value={fields.instrument}
          onChange={event => change({ instrument: event.currentTarget.value })}
        >
          <option value="">{words.t('ui:prompts.instrument-unknown')}</option>
          {instruments.map(one => (
            <option key={one.id} value={one.id}>
              {words.t(`observations:${id}.instruments.${one.id}`)}
            </option>
          ))}
        </select>
      )}
    </NumberField>
  )
}
