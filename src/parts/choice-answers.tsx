import type { ChoiceObservation } from '../tree/observation.ts'
import { answerLabel } from '../words/tree-texts.ts'
import { AnswerName } from './answer-name.tsx'
import { HintButton, HintText, useAnswerHint } from './hint.tsx'
import { KEY_UNSURE, Key, keyOf } from './key.tsx'
import { Picture, usePictureOf } from './picture.tsx'
import { useSetting } from './setting.tsx'

/**
 * The answers of a choice as cards to press. Buttons, not radios: an arrow key must never answer.
 * The authored order, most worrying first, is not shown: the caller describes, the tool judges.
 */
export function ChoiceAnswers({
  observation,
  told,
  onAnswer
}: {
  observation: ChoiceObservation
  told: string | undefined
  onAnswer: (answer: string) => void
}) {
  const { pictures } = useSetting()
  const pictured = Object.keys(pictures[observation.id]?.answers ?? {}).length > 0
  const answers = shownOrder(observation)
  return (
    <div class={pictured ? 'cards cards-pictured' : 'cards'}>
      {answers.map((answer, index) => (
        <AnswerCard
          key={answer}
          observation={observation.id}
          answer={answer}
          shortcut={keyOf(index)}
          pictured={pictured}
          isTold={told === answer}
          onAnswer={onAnswer}
        />
      ))}
      <AnswerCard
        observation={observation.id}
        answer="unsure"
        shortcut={KEY_UNSURE}
        pictured={false}
        isTold={told === 'unsure'}
        onAnswer={onAnswer}
      />
    </div>
  )
}

/** The gentle and the worrying mixed, the same for everybody: by the alphabet of their ids. */
function shownOrder({ answers }: ChoiceObservation): readonly string[] {
  return answers.map(({ id }) => id).sort()
}

function AnswerCard({
  observation,
  answer,
  shortcut,
  pictured,
  isTold,
  onAnswer
}: {
  observation: string
  answer: string
  shortcut: string | undefined
  pictured: boolean
  isTold: boolean
  onAnswer: (answer: string) => void
}) {
  const { words, fromMemory } = useSetting()
  const hint = useAnswerHint(observation, answer)
  const picture = usePictureOf(observation, answer)
  // Beside "not sure" stands what to try next.
  const silent = fromMemory === true && answer === 'unsure'
  return (
    <div
      class={answer === 'unsure' ? 'card-box card-box-unsure' : 'card-box'}
      data-open={hint.isOpen || undefined}
    >
      <button
        type="button"
        class="card"
        aria-pressed={isTold}
        aria-describedby={silent ? undefined : hint.id}
        data-answer={answer}
        data-key={shortcut}
        onClick={() => onAnswer(answer)}
      >
        {pictured && picture !== null && <Picture id={picture} />}
        <span class="card-label">
          <Key of={shortcut} />
          <AnswerName observation={observation} answer={answer} />
        </span>
        {!silent && <HintText hint={hint} look="card-hint" />}
      </button>
      {!silent && <HintButton about={answerLabel(words, observation, answer)} hint={hint} />}
    </div>
  )
}
