import { useSetting } from './setting.tsx'

/** A block of a drawn strip: what it reads, and about which color such strips turn. */
interface Block {
  readonly ph: number
  readonly color: string
}

// Drawn colors only: every maker's chart differs, and the words beside the strip say so.
const NARROW: readonly Block[] = [
  { ph: 2.8, color: '#C2452E' },
  { ph: 3.1, color: '#D26A33' },
  { ph: 3.4, color: '#DD8A3B' },
  { ph: 3.7, color: '#E3A94A' },
  { ph: 4, color: '#DDBF58' },
  { ph: 4.3, color: '#B9B457' },
  { ph: 4.6, color: '#8FA458' }
]
const WIDE: readonly Block[] = [
  { ph: 1, color: '#B93A2C' },
  { ph: 2, color: '#CB5630' },
  { ph: 3, color: '#DB7C37' },
  { ph: 4, color: '#E2A548' },
  { ph: 5, color: '#D8BE59' },
  { ph: 6, color: '#B3B356' },
  { ph: 7, color: '#7F9E5C' },
  { ph: 8, color: '#4F8A72' },
  { ph: 9, color: '#3F7387' }
]

/** A test strip to press on where it matches; the number stays open to be typed more exactly. */
export function Strip({
  wide,
  value,
  onPick
}: {
  wide: boolean
  value: number | null
  onPick: (ph: number) => void
}) {
  const { words } = useSetting()
  const blocks = wide ? WIDE : NARROW
  return (
    <fieldset class="strip">
      <legend>{words.t('ui:prompts.strip')}</legend>
      <div class="strip-blocks">
        {blocks.map(({ ph, color }) => (
          <button
            key={ph}
            type="button"
            class="strip-block"
            aria-pressed={value === ph}
            onClick={() => onPick(ph)}
          >
            <svg viewBox="0 0 40 40" aria-hidden="true">
              <rect width="40" height="40" fill={color} />
            </svg>
            <span>{ph}</span>
          </button>
        ))}
      </div>
      <p class="strip-note">{words.t('ui:prompts.strip-note')}</p>
    </fieldset>
  )
}
