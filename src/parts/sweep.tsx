import { KEY_FIRST, KEY_NONE, KEY_UNSURE, KeyedAnswer } from './key.tsx'
import { Text } from './text.tsx'

/**
 * A screen of signs asked as one question: a plain no rules all of them out, and any other answer opens
 * the list, where each has an answer of its own.
 */
export function Sweep({
  observation,
  onNone,
  onOpen
}: {
  observation: string
  onNone: () => void
  onOpen: () => void
}) {
  const ways = [
    { answer: 'none', key: KEY_NONE, text: 'ui:sweep.no', press: onNone },
    { answer: 'some', key: KEY_FIRST, text: 'ui:sweep.yes', press: onOpen },
    { answer: 'unsure', key: KEY_UNSURE, text: 'ui:not-sure', press: onOpen }
  ] as const
  return (
    <div class="sweep">
      <p class="sweep-line">
        <Text k={`observations:${observation}.sweep`} />
      </p>
      <div class="actions sweep-answers">
        {ways.map(({ answer, key, text, press }) => (
          <KeyedAnswer key={answer} look="secondary" answer={answer} shortcut={key} onPress={press}>
            <Text k={text} />
          </KeyedAnswer>
        ))}
      </div>
    </div>
  )
}
