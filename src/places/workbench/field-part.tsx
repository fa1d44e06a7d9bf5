import { useSpeech } from '../../parts/setting.tsx'
import { readDecimal } from '../../science/decimal.ts'
import type { CalculatorInput, KeyUnder } from '../../words/reckoned/inputs.ts'
import { type FieldUnit, type TypedFields, unitsOf } from './fields.ts'

/** One input of a calculator, with its unit and, where it has one, a slider. */
export function FieldPart({
  field,
  values,
  isFaulty,
  onChange
}: {
  field: CalculatorInput
  values: TypedFields
  isFaulty: boolean
  onChange: (more: TypedFields) => void
}) {
  const { words } = useSpeech()
  const { id } = field
  const value = values[id] ?? ''
  const label = <label for={`field-${id}`}>{words.t(`ui:workbench.fields.${id}`)}</label>
  switch (field.kind) {
    case 'choice':
      return (
        <div class="input-field">
          {label}
          <select
            id={`field-${id}`}
            value={value}
            onChange={event => onChange({ [id]: event.currentTarget.value })}
          >
            {field.options.map(option => (
              <option key={option} value={option}>
                {words.t(`ui:workbench.options.${option}`)}
              </option>
            ))}
          </select>
        </div>
      )
    case 'readings':
      return (
        <div class="input-field input-field-wide">
          {label}
          <textarea
            id={`field-${id}`}
            rows={5}
            spellcheck={false}
            aria-describedby={`field-${id}-how`}
            value={value}
            onInput={event => onChange({ [id]: event.currentTarget.value })}
          />
          <p id={`field-${id}-how`} class="input-how">
            {words.t('ui:workbench.paste')}
          </p>
        </div>
      )
    case 'amount':
    case 'number':
      return (
        <div class="input-field">
          {label}
          <input
            id={`field-${id}`}
            inputMode="decimal"
            autocomplete="off"
            value={value}
            aria-invalid={isFaulty}
            onInput={event => onChange({ [id]: event.currentTarget.value })}
          />
          <UnitPart field={field} values={values} onChange={onChange} />
          {field.slider && (
            <input
              type="range"
              aria-label={words.t(`ui:workbench.fields.${id}`)}
              min={field.slider.from}
              max={field.slider.to}
              step={field.slider.step}
              value={readDecimal(value) ?? 0}
              onInput={event => onChange({ [id]: event.currentTarget.value })}
            />
          )}
        </div>
      )
  }
}

function UnitPart({
  field,
  values,
  onChange
}: {
  field: CalculatorInput
  values: TypedFields
  onChange: (more: TypedFields) => void
}) {
  const { words } = useSpeech()
  const { id } = field
  const units = unitsOf(field)
  const [only, ...others] = units
  if (only === undefined) return null
  const name = (unit: FieldUnit) => words.t(`ui:workbench.units.${keyOf(unit)}`)
  if (others.length === 0) return <span>{name(only)}</span>
  return (
    <select
      aria-label={words.t('ui:prompts.unit')}
      value={values[`${id}-unit`]}
      onChange={event => onChange({ [`${id}-unit`]: event.currentTarget.value })}
    >
      {units.map(unit => (
        <option key={unit} value={unit}>
          {name(unit)}
        </option>
      ))}
    </select>
  )
}

/** A unit as its text is keyed: small letters alone. */
const keyOf = (unit: FieldUnit): UnitKey =>
  (({ '%': 'percent', 'g/L': 'per-liter', '°Bx': 'brix' })[unit as string] ??
    unit.toLowerCase()) as UnitKey
type UnitKey = KeyUnder<'units'>
