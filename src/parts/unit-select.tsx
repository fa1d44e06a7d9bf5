import { useSpeech } from './setting.tsx'

/** The unit beside a number; a list where there is a choice. */
export function UnitSelect<U extends string>({
  id,
  units,
  unit,
  nameOf,
  onChange
}: {
  id?: string
  units: readonly U[]
  unit: string | undefined
  nameOf: (unit: U) => string
  onChange: (unit: U) => void
}) {
  const { words } = useSpeech()
  const [only, ...others] = units
  if (only === undefined) return null
  if (others.length === 0) return <span>{nameOf(only)}</span>
  return (
    <select
      aria-label={words.t('ui:prompts.unit')}
      id={id}
      value={unit}
      onChange={event => {
        const found = units.find(one => one === event.currentTarget.value)
        if (found !== undefined) onChange(found)
      }}
    >
      {units.map(one => (
        <option key={one} value={one}>
          {nameOf(one)}
        </option>
      ))}
    </select>
  )
}
