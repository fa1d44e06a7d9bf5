import { type Answer, type Answers, choiceOf, isSigns, type SignValue, signsOf } from './answers.ts'
import { worseSign } from './decide.ts'
import { rank } from './effective.ts'
import type { Observation, SignsObservation } from './observation.ts'
import type { Tree } from './tree.ts'

/**
 * Adds one told fact to the answers. Of two answers to a choice the one listed first counts, of two to
 * a sign the more worrying; a new measurement replaces the old. The order of telling never matters
 * but for measurements.
 */
export function tell(answers: Answers, observation: Observation, answer: Answer): Answers {
  const { id } = observation
  if (observation.kind === 'measure') return { ...answers, [id]: answer }
  if (observation.kind === 'choice') {
    const before = choiceOf(answers, id)
    const keep = before !== undefined && rank(observation, before) < rank(observation, answer)
    return keep ? answers : { ...answers, [id]: answer }
  }
  const signs: Record<string, SignValue> = { ...signsOf(answers, id) }
  for (const [sign, value] of Object.entries(isSigns(answer) ? answer : {})) {
    const before = signs[sign]
    signs[sign] = before === undefined ? value : worseSign(before, value)
  }
  return { ...answers, [id]: signs }
}

/** Takes an answer back: the rest alone decides, as on a fresh start. */
export function withdraw(answers: Answers, observation: string): Answers {
  return Object.fromEntries(Object.entries(answers).filter(([id]) => id !== observation))
}

/** "None of these": sets the signs that are still open, and asked at all, to no. */
export function noneOf(answers: Answers, observation: SignsObservation): Answers {
  return fillOpen(answers, observation, 'no')
}

/** "Not sure": of a screen of signs, sets the open ones to unsure; of any other observation, its answer. */
export function unsureOf(answers: Answers, observation: Observation): Answers {
  return observation.kind === 'signs'
    ? fillOpen(answers, observation, 'unsure')
    : { ...answers, [observation.id]: 'unsure' }
}

function fillOpen(answers: Answers, observation: SignsObservation, value: SignValue): Answers {
  const asked = observation.signs.filter(sign => !sign.volunteered)
  const filled = Object.fromEntries(asked.map(sign => [sign.id, value]))
  return { ...answers, [observation.id]: { ...filled, ...signsOf(answers, observation.id) } }
}

/** Of answers told to one tree those that another asks about as well: ids mean the same in every tree. */
export function carriedOver(tree: Tree, answers: Answers): Answers {
  return Object.fromEntries(
    Object.entries(answers).filter(([id]) => Object.hasOwn(tree.observations, id))
  )
}
