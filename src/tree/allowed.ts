import { type Answers, choiceOf, type Interval, measureOf, settlersOf, signsOf } from './answers.ts'
import { bandKey } from './bands.ts'
import { rank, standsFor } from './effective.ts'
import type { ChoiceObservation } from './observation.ts'
import type { Variable } from './space.ts'
import type { Tree } from './tree.ts'

/** Which values of a coordinate the answers told so far leave open, by index. */
export function allowedValues(
  tree: Tree,
  variable: Variable,
  answers: Answers
): readonly boolean[] {
  const observation = tree.observations[variable.observation]
  if (observation?.kind === 'choice') {
    const open = openChoices(tree, observation, answers)
    return variable.values.map(({ answer }) => open.has(answer as string))
  }
  if (variable.sign !== undefined) {
    const told = signsOf(answers, variable.observation)[variable.sign]
    return variable.values.map(({ answer }) => told === undefined || answer === told)
  }
  const told = measureOf(answers, variable.observation)
  if (told === undefined) return variable.values.map(() => true)
  if (told === 'unsure' || observation?.kind !== 'measure') {
    return variable.values.map(({ answer }) => answer === told)
  }
  const wanted = bandKey(tree, observation, told)
  return variable.values.map(
    ({ answer }) =>
      typeof answer !== 'string' && bandKey(tree, observation, answer as Interval) === wanted
  )
}

/** The effective answers that an observation can still have, settling ones counted in. */
function openChoices(
  tree: Tree,
  observation: ChoiceObservation,
  answers: Answers
): ReadonlySet<string> {
  const all = [...observation.answers.map(answer => answer.id), 'unsure']
  const told = choiceOf(answers, observation.id)
  const settlers = settlersOf(tree, observation.id) as readonly ChoiceObservation[]
  let open = new Set(told === undefined ? all : [told])
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
