import type { TextKey } from '../words/text-key.ts'
import { KEY_FIRST, KEY_NONE, KEY_UNSURE, KeyedAnswer } from './key.tsx'
import { Text } from './text.tsx'

/**
 * A screen of signs asked as one question: a plain no rules all of them out, and any other answer opens
 * the list, where each has an answer of its own. A second screen of signs can be asked under the same
 * answers; then only a no to both rules them out.
 */
export function Sweep({
  observation,
  along,
  onNone,
  onOpen
}: {
  observation: string
  along: string | null
  onNone: () => void
  onOpen: () => void
}) {
  const no: TextKey = along === null ? 'ui:sweep.no' : 'ui:sweep.no-to-both'
  const ways = [
    { answer: 'none', key: KEY_NONE, text: no, press: onNone },
    { answer: 'some', key: KEY_FIRST, text: 'ui:sweep.yes', press: onOpen },
    { answer: 'unsure', key: KEY_UNSURE, text: 'ui:not-sure', press: onOpen }
  ] as const
  return (
    <div class="sweep">
      <SweepLine of={observation} />
      {along !== null && (
        <section class="sweep-along" data-along={along}>
          <h2>
            <Text k={`observations:${along}.ask`} />
          </h2>
          <p class="question-how">
            <Text k={`observations:${along}.how`} />
          </p>
          <SweepLine of={along} />
        </section>
      )}
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

function SweepLine({ of }: { of: string }) {
  return (
    <p class="sweep-line">
      <Text k={`observations:${of}.sweep`} />
    </p>
  )
}
