import { Fragment } from 'preact'
import {
  type Answer,
  choiceOf,
  measureOf,
  signsOf,
  type Answers as Told
} from '../../tree/answers.ts'
import type { Observation } from '../../tree/observation.ts'
import { ChoiceAnswers } from './choice-answers.tsx'
import { MeasureAnswers } from './measure-answers.tsx'
import { SignsAnswers } from './signs-answers.tsx'
import { TYPED_UNITS } from './units.ts'
import { WorkOut } from './work-out.tsx'

/** The answers to one observation, whatever its kind, with what was told of it before. */
export function Answers({
  observation,
  told,
  onAnswer,
  onInputs
}: {
  observation: Observation
  told: Told
  onAnswer: (answer: Answer) => void
  /** Takes the quantities from which an observation is worked out. */
  onInputs: (inputs: Told) => void
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
          onAnswer={onAnswer}
        />
      )
    case 'measure':
      return (
        <Fragment key={id}>
          {TYPED_UNITS[observation.unit].length > 0 && (
            <MeasureAnswers
              observation={observation}
              told={measureOf(told, id)}
              onAnswer={onAnswer}
            />
          )}
          {observation.derived && (
            <WorkOut observation={observation} told={told} onInputs={onInputs} />
          )}
        </Fragment>
      )
  }
}
