import { useEffect, useMemo, useState } from 'preact/hooks'
import { createReading, type Voice } from '../../machine/reading.ts'
import { useSpeech } from '../../parts/setting.tsx'
import { spokenSentences } from '../../words/spoken-text.ts'

/** What is on the screen, to be read. */
export interface AloudScreen {
  /** Another one is another screen: the reading of the one before ends. */
  readonly id: string
  /** Its texts in the order of the screen, when somebody asks for them. */
  readonly texts: () => readonly string[]
}

const DRAWN = {
  silent: 'M4 12h6l8-7v22l-8-7H4zM22 11q4 5 0 10M26 7q7 9 0 18',
  speaking: 'M9 5v22M23 5v22',
  paused: 'M8 4v24l19-12z'
} as const
const AGAIN = 'M7 10a11 11 0 1 1-2 8M5 3v8h8'

/** One button that reads the screen, pauses and goes on, and while it reads one that begins anew. */
export function ReadAloud({
  voice,
  screen,
  covered,
  onSentence
}: {
  voice: Voice
  screen: AloudScreen
  covered: boolean
  onSentence: () => void
}) {
  const { words } = useSpeech()
  const reading = useMemo(createReading, [])
  const [{ state, failed }, setView] = useState(reading.view)
  useEffect(
    () =>
      reading.subscribe(() => {
        const view = reading.view()
        setView(view)
        if (view.state === 'speaking') onSentence()
      }),
    [reading]
  )
  useEffect(() => {
    const stop = () => reading.send({ type: 'stop' })
    const look = () => document.hidden && stop()
    document.addEventListener('visibilitychange', look)
    return () => {
      document.removeEventListener('visibilitychange', look)
      stop()
    }
  }, [reading, screen.id, words.tag, covered])
  const labels = {
    silent: words.t('ui:kiosk.read-aloud'),
    speaking: words.t('ui:kiosk.pause'),
    paused: words.t('ui:kiosk.go-on')
  } as const
  const press = () => {
    if (state === 'speaking') reading.send({ type: 'pause' })
    else if (state === 'paused') reading.send({ type: 'go-on' })
    else {
      const sentences = spokenSentences(screen.texts(), words.tag)
      reading.send({ type: 'read', sentences, voice })
    }
  }
  return (
    <>
      <button
        type="button"
        class="aid aid-again"
        data-aid="again"
        aria-label={words.t('ui:kiosk.from-start')}
        // It may have the focus when the reading ends.
        aria-disabled={state === 'silent'}
        onClick={() => reading.send({ type: 'again' })}
      >
        <Drawn path={AGAIN} />
      </button>
      <button type="button" class="aid aid-read" data-aid="read" data-state={state} onClick={press}>
        <Drawn path={DRAWN[state]} />
        {/* One below the other, so that the button keeps its width; only one is there for anybody. */}
        <span class="aid-labels">
          {(['silent', 'speaking', 'paused'] as const).map(one => (
            <span key={one} data-shown={one === state}>
              {labels[one]}
            </span>
          ))}
        </span>
      </button>
      <p class="aids-trouble" role="status">
        {failed && words.t('ui:kiosk.no-speech')}
      </p>
    </>
  )
}

function Drawn({ path }: { path: string }) {
  return (
    <svg viewBox="0 0 32 32" aria-hidden="true">
      <path d={path} />
    </svg>
  )
}
