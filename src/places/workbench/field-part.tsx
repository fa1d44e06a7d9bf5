import { NumberField } from '../../parts/number-field.tsx'
import { useSpeech } from '../../parts/setting.tsx'
import { UnitSelect } from '../../parts/unit-select.tsx'
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
  const name = words.t(`ui:workbench.fields.${id}`)
  const label = <label for={`field-${id}`}>{name}</label>
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
        <NumberField
          id={`field-${id}`}
          look="input-field"
          label={name}
          typed={value}
          fault={isFaulty ? '' : null}
          onTyped={typed => onChange({ [id]: typed })}
        >
          <UnitSelect
            units={unitsOf(field)}
            unit={values[`${id}-unit`]}
            nameOf={unit => words.t(`ui:workbench.units.${KEYS[unit]}`)}
            onChange={unit => onChange({ [`${id}-unit`]: unit })}
          />
          {field.slider && (
            <input
              type="range"
              aria-label={name}
              min={field.slider.from}
              max={field.slider.to}
              step={field.slider.step}
              value={readDecimal(value) ?? 0}
              onInput={event => onChange({ [id]: event.currentTarget.value })}
            />
          )}
        </NumberField>
      )
  }
}

/** Each unit as its text is keyed: small letters alone. */
const KEYS: Readonly<Record<FieldUnit, KeyUnder<'units'>>> = {
  mL: 'ml',
  L: 'l',
  tsp: 'tsp',
  tbsp: 'tbsp',
  floz: 'floz',
  cup: 'cup',
  pint: 'pint',
  quart: 'quart',
  gal: 'gal',
  'imperial-gal': 'imperial-gal',
  g: 'g',
  kg: 'kg',
  oz: 'oz',
  lb: 'lb',
  C: 'c',
  F: 'f',
  kPa: 'kpa',
  bar: 'bar',
  psi: 'psi',
  atm: 'atm',
  pH: 'ph',
  days: 'days',
  '%': 'percent',
  'g/L': 'per-liter',
  ppm: 'ppm',
  '°Bx': 'brix'
}
