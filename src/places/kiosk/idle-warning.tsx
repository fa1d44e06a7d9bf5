import { useEffect, useLayoutEffect, useRef } from 'preact/hooks'
import { useSpeech } from '../../parts/setting.tsx'
import { footNumbers } from '../../words/foot-numbers.ts'
import { Countdown, spokenSeconds } from './countdown.tsx'

/** How long after a finger was lifted its click may still come. */
const LATE_CLICK = 400
/** Keys that move about in the dialog, or do nothing by themselves. */
const MOVES = ['Tab', 'Shift', 'Control', 'Alt', 'Meta']

/** Says that the answers will be wiped, over the whole screen; one touch anywhere, or Escape, keeps them. */
export function IdleWarning({ left, onExtend }: { left: number; onExtend: () => void }) {
  const { words } = useSpeech()
  const dialog = useRef<HTMLDialogElement>(null)
  const late = useRef(0)
  useLayoutEffect(() => {
    dialog.current?.showModal()
    // Closing it gives the focus back to where it was.
    return () => dialog.current?.close()
  }, [])
  useEffect(() => () => clearTimeout(late.current), [])
  const spoken = spokenSeconds(left)
  return (
    <dialog
      ref={dialog}
      class="idle-warning"
      aria-labelledby="still-there"
      aria-describedby="wiped-in"
      // The click itself ends it: closed any sooner, the screen below would get the click.
      onClick={onExtend}
      onPointerUp={() => {
        late.current = window.setTimeout(onExtend, LATE_CLICK)
      }}
      onPointerCancel={onExtend}
      onWheel={onExtend}
      onKeyDown={event => {
        if (MOVES.includes(event.key)) return
        // Else what has the focus next would get the key.
        event.preventDefault()
        onExtend()
      }}
      onCancel={event => {
        event.preventDefault()
        onExtend()
      }}
    >
      <div class="idle-warning-card">
        <Countdown left={left} />
        <h2 id="still-there">{words.t('ui:kiosk.still-there')}</h2>
        <p aria-hidden="true">{words.t('ui:kiosk.wiped-in', { count: left })}</p>
        <p class="visually-hidden" id="wiped-in" role="status" aria-live="polite">
          {words.t('ui:kiosk.wiped-in', { count: spoken })}
        </p>
        <button type="button" class="primary">
          {words.t('ui:kiosk.keep-going')}
        </button>
        <p class="idle-warning-how">{words.t('ui:kiosk.anywhere')}</p>
        {/* Over an emergency too these two stay in sight. */}
        <p class="idle-warning-numbers">
          {footNumbers(words, undefined).map(({ name, phone }) => (
            <span key={name}>
              {name}{' '}
              <strong class="whole">
                <bdi>{phone}</bdi>
              </strong>{' '}
            </span>
          ))}
        </p>
      </div>
    </dialog>
  )
}
