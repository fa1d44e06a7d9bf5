import { type Answers, choiceOf, signsOf } from './answers.ts'
import { verdict } from './caution.ts'
import type { Effect, Tree } from './tree.ts'

export const EMERGENCY = 'emergency'

/** An answer that, once told, ends the walk at the emergency words wherever it stands. */
export interface EmergencySign {
  readonly question: string
  readonly observation: string
  readonly sign: string
  readonly effect: Effect
}

const cache = new WeakMap<Tree, readonly EmergencySign[]>()

/**
 * Every answer of the tree that is an emergency on any walk; looked up once, asked for at every step.
 * What is one only after something else was told (an upset stomach after a food that may hold a toxin)
 * is raised where the walk comes to it.
 */
export function emergencySigns(tree: Tree): readonly EmergencySign[] {
  const signs = cache.get(tree) ?? signsOfEmergency(tree)
  cache.set(tree, signs)
  return signs
}

function signsOfEmergency(tree: Tree): readonly EmergencySign[] {
  const anywhere = Object.values(tree.questions).filter(({ onlyHere }) => onlyHere !== true)
  return anywhere.flatMap(question => {
    const effects: [string, Effect][] =
      question.kind === 'signs'
        ? Object.entries(question.signs).map(([sign, { yes }]) => [sign, yes])
        : question.kind === 'choice'
          ? Object.entries(question.answers)
          : []
    return effects
      .filter(([, effect]) => effect.raise.some(id => verdict(tree, id).id === EMERGENCY))
      .map(([sign, effect]) => ({
        question: question.id,
        observation: question.asks,
        sign,
        effect
      }))
  })
}

/** The emergency signs among the answers: they count before any question, and whatever else is open. */
export function emergenciesTold(tree: Tree, answers: Answers): readonly EmergencySign[] {
  return emergencySigns(tree).filter(
    ({ observation, sign }) =>
      signsOf(answers, observation)[sign] === 'yes' || choiceOf(answers, observation) === sign
  )
}
