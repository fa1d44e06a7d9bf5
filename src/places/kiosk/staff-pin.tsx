import { useEffect, useState } from 'preact/hooks'
import { useSpeech } from '../../parts/setting.tsx'
import { StepHeading } from '../../parts/step-heading.tsx'
import type { TextKey } from '../../words/text-key.ts'
import { canHash, hashPin, isPin, PIN_SHAPE } from './pin.ts'

const DIGITS = ['1', '2', '3', '4', '5', '6', '7', '8', '9'] as const
const MOST = 8
const TRIES = 5
const MINUTE = 60_000
/** Wrong tries since the kiosk was opened, and when the last was: closing the menu forgives none. */
const wrong = { count: 0, last: 0 }

/** Asks for the PIN; where there is none yet, for a new one, twice. */
export function StaffPin({
  kept,
  onPassed
}: {
  /** The PIN as it is kept; null where one is to be set. */
  kept: string | null
  /** Called with the PIN as it is to be kept. */
  onPassed: (kept: string) => void
}) {
  const { words } = useSpeech()
  const [digits, setDigits] = useState('')
  const [first, setFirst] = useState<string | null>(null)
  const [trouble, setTrouble] = useState<TextKey | null>(null)
  const [busy, setBusy] = useState(false)
  const add = (digit: string) => setDigits(before => (before + digit).slice(0, MOST))
  const cut = () => setDigits(before => before.slice(0, -1))
  useEffect(() => {
    const type = ({ key }: KeyboardEvent) => {
      if (/^\d$/.test(key)) add(key)
      else if (key === 'Backspace') cut()
    }
    addEventListener('keydown', type)
    return () => removeEventListener('keydown', type)
  }, [])
  if (!canHash()) return <p class="notice">{words.t('ui:staff.no-pin-here')}</p>

  const say = (key: TextKey | null) => {
    setTrouble(key)
    setDigits('')
  }
  async function enter() {
    if (busy || !PIN_SHAPE.test(digits)) return
    setBusy(true)
    await (kept === null ? set() : check(kept))
    setBusy(false)
  }
  async function set() {
    if (first === null) {
      setFirst(digits)
      say(null)
    } else if (first !== digits) {
      setFirst(null)
      say('ui:staff.pin-differs')
    } else onPassed(await hashPin(digits))
  }
  async function check(right: string) {
    const now = performance.now()
    if (wrong.count >= TRIES && now - wrong.last < MINUTE) return say('ui:staff.wait-pin')
    if (await isPin(digits, right)) {
      wrong.count = 0
      return onPassed(right)
    }
    wrong.count = wrong.count >= TRIES ? 1 : wrong.count + 1
    wrong.last = now
    say(wrong.count >= TRIES ? 'ui:staff.wait-pin' : 'ui:staff.wrong-pin')
  }
  const asks: TextKey =
    kept !== null
      ? 'ui:staff.enter-pin'
      : first === null
        ? 'ui:staff.set-pin'
        : 'ui:staff.repeat-pin'
  return (
    <section class="pin">
      <StepHeading step={asks}>{words.t(asks)}</StepHeading>
      {kept === null && <p class="pin-how">{words.t('ui:staff.set-pin-how')}</p>}
      <p class="pin-dots" aria-hidden="true">
        {Array.from({ length: Math.max(4, digits.length) }, (_, place) => (
          <span key={place} class={place < digits.length ? 'pin-dot pin-dot-full' : 'pin-dot'} />
        ))}
      </p>
      <p class="visually-hidden" role="status">
        {words.t('ui:staff.digits', { count: digits.length })}
      </p>
      <p class="pin-trouble" role="alert">
        {trouble !== null && words.t(trouble)}
      </p>
      <div class="pin-pad">
        {DIGITS.map(digit => (
          <button key={digit} type="button" class="pin-key" onClick={() => add(digit)}>
            {digit}
          </button>
        ))}
        <button
          type="button"
          class="pin-key"
          aria-label={words.t('ui:staff.delete-digit')}
          onClick={cut}
        >
          ⌫
        </button>
        <button type="button" class="pin-key" onClick={() => add('0')}>
          0
        </button>
        <button
          type="button"
          class="pin-key pin-enter"
          aria-disabled={busy || !PIN_SHAPE.test(digits)}
          onClick={enter}
        >
          {words.t('ui:staff.enter')}
        </button>
      </div>
    </section>
  )
}
