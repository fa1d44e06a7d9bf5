import {
  type Answers,
  type Interval,
  SIGN_VALUES,
  type Signs,
  signsOf,
  signValueOf
} from '../tree/answers.ts'
import { bandsOf } from '../tree/bands.ts'
import { emergencySigns } from '../tree/emergency.ts'
import type { Observation } from '../tree/observation.ts'
import type { Tree } from '../tree/tree.ts'

/** One coordinate of the answer space: a choice, one sign of a screen, or a measure. */
export interface Variable {
  readonly observation: string
  /** For a sign of a screen. */
  readonly sign?: string
  readonly values: readonly Value[]
}

/** One value of a coordinate; of a measure, one interval for all that the limits do not tell apart. */
export interface Value {
  readonly label: string
  /** The answer in full for a choice or a measure; for a sign its value. */
  readonly answer: string | Interval
}

/**
 * The answer space of a tree: the product of what it asks anywhere, in the order of the walk.
 * Settling observations are no coordinates (the settled one carries the effective answer); emergency
 * answers are left out, since every rule and law on batch, container and use speaks of the rest.
 */
export function spaceOf(tree: Tree): readonly Variable[] {
  const asked = new Set(Object.values(tree.questions).map(question => question.asks))
  const emergencies = new Set(
    emergencySigns(tree).map(({ observation, sign }) => `${observation} ${sign}`)
  )
  const isEmergency = (observation: string, answer: string) =>
    emergencies.has(`${observation} ${answer}`)
  return Object.values(tree.observations)
    .filter(observation => asked.has(observation.id))
    .flatMap(observation => variablesOf(tree, observation, isEmergency))
}

function variablesOf(
  tree: Tree,
  observation: Observation,
  isEmergency: (observation: string, answer: string) => boolean
): readonly Variable[] {
  const { id } = observation
  switch (observation.kind) {
    case 'choice': {
      if (observation.settles !== undefined) return []
      const answers = [...observation.answers.map(answer => answer.id), 'unsure']
      return [{ observation: id, values: answers.filter(a => !isEmergency(id, a)).map(named) }]
    }
    case 'signs':
      return observation.signs.map(sign => ({
        observation: id,
        sign: sign.id,
        values: SIGN_VALUES.filter(v => v !== 'yes' || !isEmergency(id, sign.id)).map(named)
      }))
    case 'measure': {
      const bands = bandsOf(tree, observation)
      const values = bands.map(({ label, interval }) => ({ label, answer: interval }))
      return [{ observation: id, values: [...values, named('unsure')] }]
    }
  }
}

function named(answer: string): Value {
  return { label: answer, answer }
}

/** Adds one coordinate's value to a set of answers. */
export function withValue(answers: Answers, variable: Variable, value: Value): Answers {
  if (variable.sign === undefined) return { ...answers, [variable.observation]: value.answer }
  const signs: Signs = signsOf(answers, variable.observation)
  return {
    ...answers,
    [variable.observation]: { ...signs, [variable.sign]: signValueOf(value.answer) }
  }
}
