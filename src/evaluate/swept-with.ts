import { type Answers, type SignValue, signsOf } from '../tree/answers.ts'
import type { SignsObservation } from '../tree/observation.ts'
import { noneOf, unsureOf } from '../tree/tell.ts'
import type { Tree } from '../tree/tree.ts'
import { type Walk, walk } from './walk.ts'

/**
 * The screen of signs that a walk asks for next whatever is answered to the one it asks for now, so that
 * one answer can rule out both and nobody is asked what the first would have spared them (to smell a
 * jar that is to be thrown out). Null where there is none, where something of either was told, and
 * about people, who are asked about by themselves.
 */
export function sweptWith(tree: Tree, answers: Answers, { asks }: Walk): SignsObservation | null {
  const now = untoldSigns(tree, answers, asks?.observation)
  if (now === null) return null
  const next = (answers: Answers) => walk(tree, answers).asks?.observation
  const none = noneOf(answers, now)
  const second = untoldSigns(tree, answers, next(none))
  if (second === null) return null
  const but = (sign: string, value: SignValue): Answers => ({
    ...none,
    [now.id]: { ...signsOf(none, now.id), [sign]: value }
  })
  const others = [
    unsureOf(answers, now),
    ...now.signs.flatMap(({ id }) => [but(id, 'yes'), but(id, 'unsure')])
  ]
  return others.every(answer => next(answer) === second.id) ? second : null
}

function untoldSigns(
  tree: Tree,
  answers: Answers,
  id: string | undefined
): SignsObservation | null {
  const observation = id === undefined ? undefined : tree.observations[id]
  if (observation?.kind !== 'signs' || observation.about === 'person') return null
  return Object.keys(signsOf(answers, observation.id)).length === 0 ? observation : null
}
