import type { Contradiction, Fact } from '../../evaluate/facts.ts'
import { useSetting } from '../../parts/setting.tsx'
import { factKey } from '../../reader/fact.ts'
import { factText, shortName, signText } from './fact-text.ts'
import type { CallInHand } from './use-call.ts'

/** The facts of the call, each to be changed or removed where it stands, and where they contradict each other. */
export function FactStrip({ call, current }: { call: CallInHand; current: string | null }) {
  const { words, tree } = useSetting()
  return (
    <section class="fact-strip" aria-label={words.t('ui:desk.facts')}>
      <h2>{words.t('ui:desk.facts')}</h2>
      {call.facts.length === 0 && <p class="fact-none">{words.t('ui:desk.no-facts')}</p>}
      <ul>
        {call.facts.map((fact, index) => (
          <FactChip
            // Two facts may say the same: where it stands is all that tells them apart.
            key={`${index} ${fact.observation}`}
            fact={fact}
            isCurrent={fact.observation === current}
            call={call}
          />
        ))}
      </ul>
      <div role="status">
        {call.contradictions.map(contradiction => (
          <p key={`${contradiction.observation} ${contradiction.sign}`} class="contradiction">
            {contradictionText(contradiction)}
          </p>
        ))}
      </div>
    </section>
  )

  function contradictionText({ observation, sign, told }: Contradiction): string {
    const text = (answer: Fact['answer']) =>
      sign === null
        ? factText(words, tree, { observation, answer }).answer
        : signText(words, observation, sign, String(answer))
    return words.t('ui:desk.contradiction', {
      name: shortName(words, observation),
      told: told.map(text).join(' / ')
    })
  }
}

function FactChip({ fact, isCurrent, call }: { fact: Fact; isCurrent: boolean; call: CallInHand }) {
  const { words, tree } = useSetting()
  const { name, answer } = factText(words, tree, fact)
  return (
    <li class="fact" data-observation={fact.observation} data-fact={factKey(fact)}>
      <button
        type="button"
        class="fact-change"
        aria-current={isCurrent ? 'step' : undefined}
        onClick={() => call.walk.change(fact.observation)}
      >
        <span class="fact-name">{name}</span> <span class="fact-answer">{answer}</span>{' '}
        <span class="visually-hidden">{words.t('ui:change')}</span>
      </button>
      <button
        type="button"
        class="fact-remove"
        aria-label={words.t('ui:desk.remove', { name, answer })}
        onClick={() => call.remove(fact)}
      >
        <svg viewBox="0 0 16 16" aria-hidden="true">
          <path d="M4 4l8 8M12 4l-8 8" />
        </svg>
      </button>
    </li>
  )
}
