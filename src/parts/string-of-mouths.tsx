import type { Answer, Answers } from '../tree/answers.ts'
import { isInterval } from '../tree/answers.ts'
import { must } from '../tree/must.ts'
import { answerText } from '../words/answer-text.ts'
import { MouthString } from './mouth-string.tsx'
import { Picture, usePictureOf } from './picture.tsx'
import { useSetting } from './setting.tsx'

/** The walk so far: a string of small jar mouths, each holding its answer; press one to change it. */
export function StringOfMouths({
  asked,
  answers,
  current,
  onChange,
  quiet = false
}: {
  /** The observations asked so far, in order. */
  asked: readonly string[]
  answers: Answers
  /** The observation on the screen; null at the outcome. */
  current: string | null
  onChange: (observation: string) => void
  /** The reader has done nothing yet: the page around stays where it is. */
  quiet?: boolean
}) {
  return (
    <MouthString
      open={current === null || asked.includes(current) ? null : current}
      at={`${current} ${asked.length}`}
      quiet={quiet}
    >
      {asked.map(id => (
        <li key={id}>
          <Bead
            observation={id}
            answer={must(answers[id], 'answer')}
            isCurrent={id === current}
            onChange={onChange}
          />
        </li>
      ))}
    </MouthString>
  )
}

function Bead({
  observation,
  answer,
  isCurrent,
  onChange
}: {
  observation: string
  answer: Answer
  isCurrent: boolean
  onChange: (observation: string) => void
}) {
  const { words, tree } = useSetting()
  const of = tree.observations[observation]
  const picture = usePictureOf(observation, typeof answer === 'string' ? answer : undefined)
  if (of === undefined) return null
  const name = words.t(`ui:short.${observation}`)
  const text = answerText(words, of, answer)
  return (
    <button
      type="button"
      class="bead"
      data-observation={observation}
      aria-current={isCurrent ? 'step' : undefined}
      aria-label={words.t('ui:change-answer', { name, answer: text })}
      onClick={() => onChange(observation)}
    >
      <span class="bead-mouth" aria-hidden="true">
        {isInterval(answer) ? (
          <span class="bead-number" data-shown={answer.reading} />
        ) : (
          picture !== null && <Picture id={picture} className="bead-picture" />
        )}
        <Told answer={answer} />
      </span>
      <span class="bead-name" aria-hidden="true">
        {name}
      </span>
    </button>
  )
}

/** How many signs were marked, as a small count on the mouth's edge. */
function Told({ answer }: { answer: Answer }) {
  if (typeof answer === 'string' || isInterval(answer)) return null
  const yes = Object.values(answer).filter(value => value === 'yes').length
  const unsure = Object.values(answer).includes('unsure')
  if (yes === 0 && !unsure) return null
  return <span class="bead-count" data-shown={yes > 0 ? yes : '?'} />
}
