/** One of several, as a row of keys of which one is down. */
export function OneOf<T extends string | number | null>({
  name,
  how,
  all,
  chosen,
  label,
  onChoose
}: {
  name: string
  how: string
  all: readonly T[]
  chosen: T
  label: (one: T) => string
  onChoose: (one: T) => void
}) {
  return (
    <fieldset class="staff-choice">
      <legend>{name}</legend>
      <p class="staff-how">{how}</p>
      <div class="staff-keys">
        {all.map(one => (
          <button
            key={one}
            type="button"
            class="staff-key"
            aria-pressed={one === chosen}
            data-value={String(one)}
            onClick={() => onChoose(one)}
          >
            {label(one)}
          </button>
        ))}
      </div>
    </fieldset>
  )
}

/** What can be on offer: each with its mouth filled while it is. The last one stays. */
export function SomeOf({
  name,
  how,
  all,
  without,
  onChange
}: {
  name: string
  how: string
  all: readonly {
    readonly id: string
    readonly label: string
    readonly drawing?: string
    readonly lang?: string
  }[]
  /** The ids that are not on offer. */
  without: readonly string[]
  onChange: (without: readonly string[]) => void
}) {
  const off = without.filter(id => all.some(one => one.id === id))
  const isOn = (id: string) => off.length === all.length || !off.includes(id)
  const toggle = (id: string) => {
    const next = isOn(id) ? [...off, id] : off.filter(one => one !== id)
    if (next.length < all.length) onChange(next)
  }
  return (
    <fieldset class="staff-choice">
      <legend>{name}</legend>
      <p class="staff-how">{how}</p>
      <div class="staff-keys staff-offers">
        {all.map(({ id, label, drawing, lang }) => (
          <button
            key={id}
            type="button"
            class="staff-key"
            lang={lang}
            aria-pressed={isOn(id)}
            data-value={id}
            onClick={() => toggle(id)}
          >
            {drawing !== undefined && (
              <span
                class="staff-drawing"
                aria-hidden="true"
                // The project's own file, checked at build.
                dangerouslySetInnerHTML={{ __html: drawing }}
              />
            )}
            {label}
          </button>
        ))}
      </div>
    </fieldset>
  )
}
