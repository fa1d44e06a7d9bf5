import {
  type Answers,
  choiceOf,
  type Interval,
  isInterval,
  measureOf,
  signsOf
} from '../tree/answers.ts'
import { bandKey, isExact } from '../tree/bands.ts'
import { rank, standsFor } from '../tree/effective.ts'
import { settlersOf } from '../tree/linked.ts'
import type { ChoiceObservation, MeasureObservation } from '../tree/observation.ts'
import type { Tree } from '../tree/tree.ts'
import type { Open } from './reach.ts'
import type { Variable } from './space.ts'

/** The values that each variable of the answer space can still have, given the answers so far. */
export function openValues(tree: Tree, variables: readonly Variable[], answers: Answers): Open {
  return variables.map(variable => allowedValues(tree, variable, answers))
}

/**
 * The values that one variable can still have, by index.
 *
 * @throws RangeError when an answer is none of them: with an empty mask every way that passes the
 * question would drop out, and the strictest of the rest would look certain.
 */
export function allowedValues(
  tree: Tree,
  variable: Variable,
  answers: Answers
): readonly boolean[] {
  // INVARIANT: a mask leaves at least one value; an empty one would make the strictest outcome look certain.
  const mask = maskOf(tree, variable, answers)
  if (!mask.includes(true)) {
    const answer = JSON.stringify(answers[variable.observation])
    throw new RangeError(`${variable.observation} cannot be ${answer} in ${tree.id}`)
  }
  return mask
}

function maskOf(tree: Tree, variable: Variable, answers: Answers): readonly boolean[] {
  const observation = tree.observations[variable.observation]
  switch (observation?.kind) {
    case 'choice': {
      const open = openChoices(tree, observation, answers)
      return variable.values.map(({ answer }) => typeof answer === 'string' && open.has(answer))
    }
    case 'measure':
      return openBands(tree, observation, variable, answers)
    default: {
      const value = signsOf(answers, variable.observation)[variable.sign ?? '']
      return variable.values.map(({ answer }) => value === undefined || answer === value)
    }
  }
}

function openBands(
  tree: Tree,
  measure: MeasureObservation,
  { values }: Variable,
  answers: Answers
): readonly boolean[] {
  const reading = measureOf(answers, measure.id)
  if (reading === undefined) return values.map(() => true)
  if (reading === 'unsure') return values.map(({ answer }) => answer === reading)
  const key = (interval: Interval) => bandKey(tree, measure, interval)
  const keys = values.map(({ answer }) => (isInterval(answer) ? key(answer) : null))
  const bandAt = (interval: Interval) => keys.indexOf(key(interval))
  // A count that lies somewhere between two can be each band from the one's to the other's.
  const [first, last] =
    isExact(measure) && reading.low < reading.high
      ? [bandAt(exactly(reading.low)), bandAt(exactly(reading.high))]
      : [bandAt(reading), bandAt(reading)]
  return keys.map((one, index) => one !== null && index >= first && index <= last)
}

const exactly = (count: number): Interval => ({ low: count, reading: count, high: count })

/** The effective answers that an observation can still have, settling ones counted in. */
function openChoices(
  tree: Tree,
  observation: ChoiceObservation,
  answers: Answers
): ReadonlySet<string> {
  const all = [...observation.answers.map(answer => answer.id), 'unsure']
  const choice = choiceOf(answers, observation.id)
  const settlers = settlersOf(tree, observation.id)
  let open = new Set(choice === undefined ? all : [choice])
  for (const settler of settlers) {
    const said = choiceOf(answers, settler.id)
    const seconds =
      said === undefined
        ? [undefined, ...settler.answers.map(answer => answer.standsFor)]
        : [standsFor(settler, said)]
    open = new Set(
      [...open].flatMap(first =>
        seconds.map(second =>
          second !== undefined && rank(observation, second) < rank(observation, first)
            ? second
            : first
        )
      )
    )
  }
  return open
}
