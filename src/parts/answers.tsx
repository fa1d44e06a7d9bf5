import type { Answer, Answers as Told } from '../tree/answers.ts'
import { isOnlyWorkedOut } from '../tree/derived.ts'
import type { Observation } from '../tree/observation.ts'
import { PlainAnswers } from './plain-answers.tsx'
import type { Together } from './signs-answers.tsx'
import { WorkOut } from './work-out.tsx'

/** The answers to one observation: told directly, or worked out where that can be. */
export function Answers({
  observation,
  told,
  together,
  onAnswer,
  onInputs
}: {
  observation: Observation
  told: Told
  together?: Together | undefined
  onAnswer: (answer: Answer) => void
  /** Takes the quantities from which an observation is worked out. */
  onInputs: (inputs: Told) => void
}) {
  return (
    <>
      {!isOnlyWorkedOut(observation) && (
        <PlainAnswers
          observation={observation}
          told={told}
          together={together}
          onAnswer={onAnswer}
        />
      )}
      {observation.kind === 'measure' && observation.derived && (
        <WorkOut key={observation.id} observation={observation} told={told} onInputs={onInputs} />
      )}
    </>
  )
}
