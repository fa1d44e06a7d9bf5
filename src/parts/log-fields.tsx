import type { ComponentChildren } from 'preact'
import type { OfficeCounty } from '../office/office-pack.ts'
import { languageName } from '../words/contact-words.ts'
import { useSpeech } from './setting.tsx'

/** A field with its label over it. */
export function LogField({ label, children }: { label: string; children: ComponentChildren }) {
  return (
    // biome-ignore lint/a11y/noLabelWithoutControl: the control is given.
    <label class="log-field">
      <span>{label}</span>
      {children}
    </label>
  )
}

/** A choice among names. */
export function LogSelect<T extends string>({
  label,
  name,
  value,
  options,
  onChange
}: {
  label: string
  name: string
  value: T
  options: readonly { readonly id: T; readonly text: string }[]
  onChange: (id: T) => void
}) {
  return (
    <LogField label={label}>
      <select
        name={name}
        value={value}
        onChange={event => {
          const chosen = options.find(({ id }) => id === event.currentTarget.value)
          if (chosen !== undefined) onChange(chosen.id)
        }}
      >
        {options.map(({ id, text }) => (
          <option key={id} value={id}>
            {text}
          </option>
        ))}
      </select>
    </LogField>
  )
}

/** A whole number, or nothing typed. */
export function LogNumber({
  label,
  name,
  value,
  from,
  to,
  required = false,
  onChange
}: {
  label: string
  name: string
  value: string
  from: number
  to: number
  required?: boolean
  onChange: (typed: string) => void
}) {
  return (
    <LogField label={label}>
      <input
        name={name}
        type="number"
        inputMode="numeric"
        min={from}
        max={to}
        step={1}
        required={required}
        value={value}
        onInput={event => onChange(event.currentTarget.value)}
      />
    </LogField>
  )
}

/** A box to tick. */
export function LogBox({
  label,
  name,
  checked,
  disabled = false,
  onChange
}: {
  label: string
  name: string
  checked: boolean
  disabled?: boolean
  onChange: (checked: boolean) => void
}) {
  return (
    <label class="log-box">
      <input
        type="checkbox"
        name={name}
        checked={checked}
        disabled={disabled}
        onChange={event => onChange(event.currentTarget.checked)}
      />
      {label}
    </label>
  )
}

const ZIP = 'zip'
const UNKNOWN = 'unknown'

/** Where a caller lives: a county of the office's list, the first digits of a ZIP code, or not known. */
export function AreaField({
  counties,
  area,
  onChange
}: {
  counties: readonly OfficeCounty[]
  /** As typed: five digits, up to three, or null where it is not known. */
  area: string | null
  onChange: (area: string | null) => void
}) {
  const { words } = useSpeech()
  const isKnown = counties.some(({ code }) => code === area)
  const value = area === null ? UNKNOWN : isKnown ? area : ZIP
  return (
    <>
      <LogSelect
        label={words.t('ui:contacts.record.area')}
        name="area"
        value={value}
        options={[
          ...counties.map(({ code, name }) => ({ id: code, text: name })),
          { id: ZIP, text: words.t('ui:contacts.record.zip') },
          { id: UNKNOWN, text: words.t('ui:contacts.keys.unknown') }
        ]}
        onChange={id => onChange(id === UNKNOWN ? null : id === ZIP ? '' : id)}
      />
      {value === ZIP && (
        <LogField label={words.t('ui:contacts.record.zip-digits')}>
          <input
            name="zip"
            inputMode="numeric"
            pattern="\d{3}"
            maxLength={3}
            required
            autocomplete="off"
            value={area ?? ''}
            onInput={event => onChange(event.currentTarget.value)}
          />
        </LogField>
      )}
    </>
  )
}

/** The languages that callers of such offices speak most, besides those of the screens. */
const SPOKEN = ['en', 'es', 'zh', 'vi', 'ko', 'fil', 'ar', 'ru', 'ht', 'pt', 'fr', 'pl', 'fa']

/** The language that a caller was answered in. */
export function LanguageField({
  language,
  onChange
}: {
  language: string
  onChange: (tag: string) => void
}) {
  const { words } = useSpeech()
  const tags = SPOKEN.includes(language) ? SPOKEN : [...SPOKEN, language]
  return (
    <LogSelect
      label={words.t('ui:contacts.record.language')}
      name="language"
      value={language}
      options={tags.map(id => ({ id, text: languageName(words, id) }))}
      onChange={onChange}
    />
  )
}

/** What was typed as a whole number between two others; null for anything else. */
export function wholeNumber(typed: string, from: number, to: number): number | null {
  const number = Number(typed)
  return typed.trim() !== '' && Number.isInteger(number) && number >= from && number <= to
    ? number
    : null
}
