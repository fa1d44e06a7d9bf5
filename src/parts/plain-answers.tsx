import { type Answer, choiceOf, measureOf, signsOf, type Answers as Told } from '../tree/answers.ts'
import type { Observation } from '../tree/observation.ts'
import { ChoiceAnswers } from './choice-answers.tsx'
import { MeasureAnswers } from './measure-answers.tsx'
import { SignsAnswers, type Together } from './signs-answers.tsx'

/** The answers to one observation as they are told directly, with what was told of it before. */
export function PlainAnswers({
  observation,
  told,
  together,
  onAnswer
}: {
  observation: Observation
  told: Told
  together?: Together | undefined
  onAnswer: (answer: Answer) => void
}) {
  // A new observation starts with fields of its own.
  const { id } = observation
  switch (observation.kind) {
    case 'choice':
      return (
        <ChoiceAnswers
          key={id}
          observation={observation}
          told={choiceOf(told, id)}
          onAnswer={onAnswer}
        />
      )
    case 'signs':
      return (
        <SignsAnswers
          key={id}
          observation={observation}
          told={signsOf(told, id)}
          together={together}
          onAnswer={onAnswer}
        />
      )
    case 'measure':
      return (
        <MeasureAnswers
          key={id}
          observation={observation}
          told={measureOf(told, id)}
          onAnswer={onAnswer}
        />
      )
  }
}
