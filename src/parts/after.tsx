import { useState } from 'preact/hooks'
import { walk } from '../evaluate/walk.ts'
import type { Answer, Answers as Told } from '../tree/answers.ts'
import { isLeft } from '../tree/caution.ts'
import { Answers } from './answers.tsx'
import { useSetting } from './setting.tsx'

/** Questions after the outcome: what to change next time. They change nothing of what was said. */
export function After({
  answers,
  onAnswer,
  onInputs
}: {
  answers: Told
  onAnswer: (observation: string, answer: Answer) => void
  onInputs: (observation: string, inputs: Told) => void
}) {
  const { words, tree } = useSetting()
  const [open, setOpen] = useState<string | null>(null)
  // Beside a jar that may burst nobody is sent to look for a cause.
  const left = isLeft(tree, walk(tree, answers).outcome.container)
  if (tree.after.length === 0 || left) return null
  return (
    <details class="after section-fold">
      <summary>
        <h2>{words.t('ui:find-the-cause')}</h2>
      </summary>
      <p>{words.t('ui:find-the-cause-how')}</p>
      <ul class="after-list">
        {tree.after.map(({ asks }) => {
          const observation = tree.observations[asks]
          if (observation === undefined) return null
          const isTold = Object.hasOwn(answers, asks)
          return (
            <li key={asks}>
              <button
                type="button"
                class="after-open"
                aria-expanded={open === asks}
                data-observation={asks}
                onClick={() => setOpen(open === asks ? null : asks)}
              >
                <span>{words.t(`observations:${asks}.ask`)}</span>
                {isTold && <span class="after-told">{words.t('ui:answered')}</span>}
              </button>
              {open === asks && (
                <div class="after-answers">
                  <p class="question-how">{words.t(`observations:${asks}.how`)}</p>
                  <Answers
                    observation={observation}
                    told={answers}
                    onAnswer={answer => {
                      onAnswer(asks, answer)
                      setOpen(null)
                    }}
                    onInputs={inputs => {
                      onInputs(asks, inputs)
                      setOpen(null)
                    }}
                  />
                </div>
              )}
            </li>
          )
        })}
      </ul>
    </details>
  )
}
