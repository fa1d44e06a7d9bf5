import { type Answer, type Answers, choiceOf } from './answers.ts'
import { settlersOf } from './linked.ts'
import type { ChoiceObservation } from './observation.ts'
import type { Tree } from './tree.ts'

/** The answer that counts, and the observation it came from when a settling one gave it. */
export interface Effective {
  readonly answer: string
  readonly settledBy?: string
}

/**
 * The answer that walk, rules and laws see: of the told one and those that settling
 * observations stand for, the one listed first counts; `unsure` only if all are.
 * Undefined while the observation itself is not told, whatever settles it.
 */
export function effectiveChoice(
  tree: Tree,
  observation: ChoiceObservation,
  answers: Answers
): Effective | undefined {
  const choice = choiceOf(answers, observation.id)
  if (choice === undefined) return undefined
  let best: Effective = { answer: choice }
  for (const settler of settlersOf(tree, observation.id)) {
    const stands = standsFor(settler, choiceOf(answers, settler.id))
    if (stands !== undefined && rank(observation, stands) < rank(observation, best.answer)) {
      best = { answer: stands, settledBy: settler.id }
    }
  }
  return best
}

/** The settled observation's answer that an answer of a settling observation stands for. */
export function standsFor(
  settler: ChoiceObservation,
  answer: string | undefined
): string | undefined {
  return settler.answers.find(candidate => candidate.id === answer)?.standsFor
}

/** Place in the authored order, most worrying first; `unsure` last of all. */
export function rank(observation: ChoiceObservation, answer: Answer | undefined): number {
  // INVARIANT: of two answers the one of the lower rank is the more worrying; laws hold authors to it.
  const index = observation.answers.findIndex(candidate => candidate.id === answer)
  return index < 0 ? observation.answers.length : index
}
