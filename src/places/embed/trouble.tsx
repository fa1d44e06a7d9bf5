import { useEffect, useRef } from 'preact/hooks'
import { Phone } from '../../parts/phone.tsx'
import { type Speech, SpeechProvider } from '../../parts/setting.tsx'
import { Text } from '../../parts/text.tsx'
import { footNumbers } from '../../words/foot-numbers.ts'

/** What stands where the questions cannot: one sentence, whom to call, and the page's own words. */
export function Trouble({
  speech,
  sentence,
  focus = false,
  onAgain
}: {
  speech: Speech
  sentence: 'no-such-tree' | 'withdrawn' | 'not-loaded' | 'not-gone-on'
  /** The reader has just acted: what came of it is read out. */
  focus?: boolean
  /** Null where trying again would change nothing. */
  onAgain: (() => void) | null
}) {
  const { words } = speech
  const said = useRef<HTMLParagraphElement>(null)
  useEffect(() => {
    if (focus) said.current?.focus()
  }, [sentence])
  return (
    <SpeechProvider value={speech}>
      <div class="screen trouble">
        <p role="status" tabIndex={-1} ref={said}>
          <Text k={`ui:embed.${sentence}`} />
        </p>
        <ul class="foot-numbers" aria-label={words.t('ui:who-to-call')}>
          {footNumbers(words, undefined).map(({ name, phone }) => (
            <li key={name}>
              {name} <Phone number={phone} />
            </li>
          ))}
        </ul>
        {onAgain !== null && (
          <button type="button" class="primary" onClick={onAgain}>
            {words.t('ui:embed.try-again')}
          </button>
        )}
        <slot />
      </div>
    </SpeechProvider>
  )
}
