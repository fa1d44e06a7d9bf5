import type { Variable } from '../diagrams/space.ts'
import type { Answers } from '../tree/answers.ts'
import { SIGN_VALUES } from '../tree/answers.ts'
import { emergencySigns } from '../tree/emergency.ts'
import type { Tree } from '../tree/tree.ts'

/** A coordinate that can tell of an emergency, with the values that do and those that do not. */
export interface AlarmingVariable {
  readonly variable: number
  readonly alarming: readonly string[]
  readonly quiet: readonly string[]
  /** All of them, in the catalogue's order. */
  readonly values: readonly string[]
  /** Answers that tell of this emergency and of nothing else. */
  readonly answers: Answers
}

/** The coordinates of a tree's answer space whose emergency values were left out of it. */
export function alarmsOf(tree: Tree, variables: readonly Variable[]): readonly AlarmingVariable[] {
  const signs = emergencySigns(tree)
  return variables.flatMap((variable, index): readonly AlarmingVariable[] => {
    const { observation: id, sign } = variable
    const named = signs.filter(one => one.observation === id && (sign ?? one.sign) === one.sign)
    const observation = tree.observations[id]
    const [first] = named
    if (first === undefined || observation === undefined) return []
    const quiet = variable.values.map(({ answer }) => String(answer))
    if (sign !== undefined) {
      const answers = { [id]: { [sign]: 'yes' as const } }
      return [{ variable: index, alarming: ['yes'], quiet, values: SIGN_VALUES, answers }]
    }
    const alarming = [...new Set(named.map(one => one.sign))]
    const listed = observation.kind === 'choice' ? observation.answers.map(one => one.id) : []
    const values = [...listed, 'unsure']
    return [{ variable: index, alarming, quiet, values, answers: { [id]: first.sign } }]
  })
}
