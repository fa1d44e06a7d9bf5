import type { TreeDiagrams } from '../../diagrams/tree-diagrams.ts'
import { rank } from '../../tree/effective.ts'
import type { Lens } from '../../tree/lens.ts'
import { type ChoiceObservation, TRACKS } from '../../tree/observation.ts'
import { everything } from '../open.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'
import { ofAnswer } from '../unsure.ts'
import { completed, shortestTo } from '../witness.ts'

/**
 * A second answer settles what somebody was unsure of. Beside an answer that was known already it never
 * makes any side of the outcome gentler: the answers of what it settles stand most worrying first.
 * Counted by pairs of a known answer and a second one that counts in its place.
 */
export const aSecondAnswerNeverReassures: Property = {
  id: 'a-second-answer-never-reassures',
  kind: 'law',
  needsWalks: true,
  prove(made, places) {
    const cases = pairsOf(made).map(pair => {
      const answers = gentler(made, pair)
      if (answers === undefined) return []
      const { index, told, settler, second } = pair
      const variable = made.variables[index]
      const value = variable?.values[told]
      if (variable === undefined || value === undefined) return []
      const shown = { ...answers, [settler]: second }
      const facts = { settler, second }
      const code = 'second-answer-reassures'
      return [ofAnswer(code, made, variable, value.label, places, shown, facts)]
    })
    return standing(this.id, this.kind, cases)
  }
}

/** A known answer, and a second one that counts in its place. */
interface Pair {
  readonly index: number
  readonly told: number
  readonly counts: number
  readonly settler: string
  readonly second: string
}

function pairsOf(made: TreeDiagrams): readonly Pair[] {
  const { observations } = made.tree
  return Object.values(observations).flatMap(settler => {
    if (settler.kind !== 'choice' || settler.settles === undefined) return []
    const settled = observations[settler.settles] as ChoiceObservation
    const index = made.indexOf(settled.id)
    const values = index === undefined ? [] : (made.variables[index]?.values ?? [])
    return settler.answers.flatMap(({ id, standsFor = '' }) => {
      const counts = values.findIndex(({ answer }) => answer === standsFor)
      return values.flatMap(({ answer }, told) =>
        index !== undefined &&
        counts >= 0 &&
        answer !== 'unsure' &&
        rank(settled, standsFor) < rank(settled, answer as string)
          ? [{ index, told, counts, settler: settler.id, second: id }]
          : []
      )
    })
  })
}

/** A set of answers of which the second answer makes some side gentler. */
function gentler(made: TreeDiagrams, { index, told, counts }: Pair) {
  const { diagrams } = made
  const open = everything(made)
  const sides: readonly Lens[] = [...TRACKS, 'use']
  for (const lens of sides) {
    const [before, after] = [told, counts].map(value =>
      diagrams.restrict(made.of(lens), index, value)
    ) as [number, number]
    const less = diagrams.combine([before, after], ([a = 0, b = 0]) => (b < a ? 1 : 0))
    const choice = shortestTo(made, less, open, level => level === 1)
    if (choice !== undefined) return completed(made, new Map([...choice, [index, told]]), open)
  }
  return undefined
}
