import type { Answer, Answers } from '../tree/answers.ts'
import type { Outcome } from '../tree/caution.ts'
import type { Tree } from '../tree/tree.ts'
import { walk } from './walk.ts'

/** The answers that may enter a link, a code or a log: none about a person. */
export function answersToKeep(tree: Tree, answers: Answers): Answers {
  return Object.fromEntries(
    Object.entries(answers).filter(([id]) => tree.observations[id]?.about !== 'person')
  )
}

/**
 * The outcome that may be logged: what the jar alone comes to. A use, a note or a referral that
 * follows only from what was told of a person is left out with it.
 */
export function outcomeToKeep(tree: Tree, answers: Answers): Outcome {
  const { outcome } = walk(tree, { ...answersToKeep(tree, answers), ...nobodyTold(tree) })
  return { ...outcome, person: null }
}

/** Every answer about a person, as if nobody had anything to tell. */
export function nobodyTold(tree: Tree): Answers {
  const people = Object.values(tree.observations).filter(({ about }) => about === 'person')
  return Object.fromEntries(people.map(observation => [observation.id, nothingTold(observation)]))
}

function nothingTold(observation: Tree['observations'][string]): Answer {
  if (observation.kind === 'signs') {
    return Object.fromEntries(observation.signs.map(({ id }) => [id, 'no' as const]))
  }
  if (observation.kind === 'choice') {
    return observation.answers.find(({ usual }) => usual)?.id ?? 'unsure'
  }
  return 'unsure'
}
