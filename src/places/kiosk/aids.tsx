import type { Looks } from '../../machine/stay.ts'
import { useSpeech } from '../../parts/setting.tsx'
import { type AloudScreen, ReadAloud } from './read-aloud-button.tsx'
import type { Shown } from './settings.ts'
import type { Speaker } from './use-voices.ts'

/** What a visitor is given to read any screen by. */
export interface AidsInHand {
  readonly shown: Shown
  /** What reads in the language shown; null where this device has no offline voice of it. */
  readonly speaker: Speaker | null
  /** The question whether anybody is there stands over the screen. */
  readonly covered: boolean
  readonly onLooks: (looks: Partial<Looks>) => void
  /** A sentence begins: whoever listens touches nothing, and is there. */
  readonly onSentence: () => void
}

/** The bar's aids, in the same place on every screen: reading aloud, larger text, stronger contrast. */
export function Aids({
  shown,
  speaker,
  covered,
  onLooks,
  onSentence,
  screen
}: AidsInHand & { screen: AloudScreen }) {
  const { words } = useSpeech()
  const large = shown.text !== 'normal'
  const strong = shown.contrast === 'high'
  return (
    <div class="aids">
      {speaker !== null && (
        <ReadAloud
          voice={speaker.voice}
          screen={screen}
          covered={covered}
          onSentence={onSentence}
        />
      )}
      <button
        type="button"
        class="aid"
        data-aid="large"
        aria-pressed={large}
        aria-label={words.t('ui:kiosk.large')}
        onClick={() => onLooks({ large: !large })}
      >
        <svg viewBox="0 0 40 32" aria-hidden="true">
          <path d="M2 27 9 11l7 16M4.5 22h9M17 27 27 4l10 23M20.5 20h13" />
        </svg>
      </button>
      <button
        type="button"
        class="aid"
        data-aid="strong"
        aria-pressed={strong}
        aria-label={words.t('ui:kiosk.strong')}
        onClick={() => onLooks({ strong: !strong })}
      >
        <svg viewBox="0 0 32 32" aria-hidden="true">
          <circle cx="16" cy="16" r="12" />
          <path class="aid-full" d="M16 4a12 12 0 0 1 0 24z" />
        </svg>
      </button>
    </div>
  )
}
