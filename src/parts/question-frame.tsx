import type { ComponentChildren } from 'preact'
import { askKey } from '../words/ask-key.ts'
import type { TextKey } from '../words/text-key.ts'
import { useSetting } from './setting.tsx'
import { StepHeading } from './step-heading.tsx'
import { Text } from './text.tsx'

/** What every question shares: heading, how to look, its answers, progress, and why it is asked. */
export function QuestionFrame({
  observation,
  question,
  progress,
  quiet,
  recalled = false,
  how = `observations:${observation}.how`,
  children
}: {
  observation: string
  /** The question whose sources stand behind the reason. */
  question: string | null
  progress: ComponentChildren
  quiet: boolean
  /** Asked from memory: nobody is sent to the jar to look. */
  recalled?: boolean
  /** How to find the answer; null where that was said before. */
  how?: TextKey | null
  children: ComponentChildren
}) {
  const { words } = useSetting()
  return (
    <section class="question" data-observation={observation}>
      <StepHeading step={observation} quiet={quiet}>
        <Text k={askKey(words, observation, recalled)} />
      </StepHeading>
      {how !== null && (
        <p class="question-how">
          <Text k={how} />
        </p>
      )}
      {children}
      <p class="question-progress visually-hidden">{progress}</p>
      <Why observation={observation} question={question} />
    </section>
  )
}

function Why({ observation, question }: { observation: string; question: string | null }) {
  const { words, tree, sources } = useSetting()
  const because = question === null ? [] : (tree.questions[question]?.because ?? [])
  return (
    <details class="why">
      <summary>{words.t('ui:why')}</summary>
      <p>{words.t(`observations:${observation}.why`)}</p>
      <ul>
        {because.map(id => (
          <li key={id}>{sources[id]?.title ?? id}</li>
        ))}
      </ul>
    </details>
  )
}
