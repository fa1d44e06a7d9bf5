import type { Answer, SignValue } from '../tree/answers.ts'
import { bandsOf } from '../tree/bands.ts'
import { isVolunteered } from '../tree/decide.ts'
import { settlersOf } from '../tree/linked.ts'
import type { Observation } from '../tree/observation.ts'
import type { Tree } from '../tree/tree.ts'

/** One way to answer a screen, and the share of callers who answer so. */
export interface Likely {
  readonly answer: Answer
  /** From 0 to 1; those of one screen make 1 together. */
  readonly share: number
}

/** How each screen is answered, by observation. Answers to two screens are taken as independent. */
export type Shares = Readonly<Record<string, readonly Likely[]>>

/** How often each answer was counted, by observation. */
export type Counted = Readonly<
  Record<string, readonly { readonly answer: Answer; readonly count: number }[]>
>

/** Counted shares where an observation was counted at all, even ones for every other. */
export function sharesOf(tree: Tree, counted: Counted = {}): Shares {
  return Object.fromEntries(
    askedObservations(tree).map(observation => [
      observation.id,
      (Object.hasOwn(counted, observation.id) && countedShares(counted[observation.id])) ||
        evenShares(tree, observation)
    ])
  )
}

/**
 * Without the answers that leave something unsure. What settles another observation, or is settled, keeps
 * them: whether it stays unsure is seen at the end.
 */
export function sureShares(tree: Tree, shares: Shares): Shares {
  return Object.fromEntries(
    Object.entries(shares).map(([id, likely]) => {
      const observation = tree.observations[id]
      const settles = observation?.kind === 'choice' && observation.settles !== undefined
      if (settles || settlersOf(tree, id).length > 0) return [id, likely]
      return [id, likely.filter(({ answer }) => !isUnsure(answer))]
    })
  )
}

const isUnsure = (answer: Answer): boolean =>
  answer === 'unsure' || (typeof answer === 'object' && Object.values(answer).includes('unsure'))

/** The observations that some question stops to ask, in the tree's order. */
export function askedObservations(tree: Tree): readonly Observation[] {
  const asked = new Set(
    Object.values(tree.questions)
      .filter(question => !isVolunteered(question))
      .map(({ asks }) => asks)
  )
  return Object.values(tree.observations).filter(({ id }) => asked.has(id))
}

function countedShares(counted: Counted[string] = []): readonly Likely[] | undefined {
  const all = counted.reduce((sum, { count }) => sum + count, 0)
  if (all === 0) return undefined
  return counted
    .filter(({ count }) => count > 0)
    .map(({ answer, count }) => ({ answer, share: count / all }))
}

/**
 * A choice: each answer and unsure; a screen of signs: none, each sign alone, unsure; a measure: each
 * run of bands and unsure. All equally likely.
 */
function evenShares(tree: Tree, observation: Observation): readonly Likely[] {
  const answers = evenAnswers(tree, observation)
  return answers.map(answer => ({ answer, share: 1 / answers.length }))
}

function evenAnswers(tree: Tree, observation: Observation): readonly Answer[] {
  switch (observation.kind) {
    case 'choice':
      return [...observation.answers.map(({ id }) => id), 'unsure']
    case 'measure':
      return [...bandsOf(tree, observation).map(({ interval }) => interval), 'unsure']
    case 'signs': {
      const asked = observation.signs.filter(sign => !sign.volunteered).map(({ id }) => id)
      const all = (value: SignValue) => Object.fromEntries(asked.map(id => [id, value]))
      return [
        all('no'),
        ...asked.map(id => ({ ...all('no'), [id]: 'yes' as const })),
        all('unsure')
      ]
    }
  }
}
