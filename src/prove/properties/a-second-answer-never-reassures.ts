import type { TreeDiagrams } from '../../diagrams/tree-diagrams.ts'
import { rank } from '../../tree/effective.ts'
import type { Lens } from '../../tree/lens.ts'
import { observationOf } from '../../tree/must.ts'
import { TRACKS } from '../../tree/observation.ts'
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
  prove(compiled, places) {
    const cases = pairsOf(compiled).map(pair => {
      const answers = gentler(compiled, pair)
      if (answers === undefined) return []
      const { index, told, settler, second } = pair
      const variable = compiled.variables[index]
      const value = variable?.values[told]
      if (variable === undefined || value === undefined) return []
      const shown = { ...answers, [settler]: second }
      const facts = { settler, second }
      const code = 'second-answer-reassures'
      return [ofAnswer(code, compiled, variable, value.label, places, shown, facts)]
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

function pairsOf(compiled: TreeDiagrams): readonly Pair[] {
  const { observations } = compiled.tree
  return Object.values(observations).flatMap(settler => {
    if (settler.kind !== 'choice' || settler.settles === undefined) return []
    const settled = observationOf(observations, settler.settles, 'choice')
    const index = compiled.indexOf(settled.id)
    const values = index === undefined ? [] : (compiled.variables[index]?.values ?? [])
    return settler.answers.flatMap(({ id, standsFor = '' }) => {
      const counts = values.findIndex(({ answer }) => answer === standsFor)
      return values.flatMap(({ answer }, first) =>
        index !== undefined &&
        counts >= 0 &&
        answer !== 'unsure' &&
        rank(settled, standsFor) < rank(settled, answer)
          ? [{ index, told: first, counts, settler: settler.id, second: id }]
          : []
      )
    })
  })
}

/** A set of answers of which the second answer makes some side gentler. */
function gentler(compiled: TreeDiagrams, { index, told, counts }: Pair) {
  const { diagrams } = compiled
  const open = everything(compiled)
  const sides: readonly Lens[] = [...TRACKS, 'use']
  for (const lens of sides) {
    const taking = (value: number) => diagrams.restrict(compiled.of(lens), index, value)
    const [before, after] = [taking(told), taking(counts)]
    const less = diagrams.combine([before, after], ([a = 0, b = 0]) => (b < a ? 1 : 0))
    const choice = shortestTo(compiled, less, open, level => level === 1)
    if (choice !== undefined) return completed(compiled, new Map([...choice, [index, told]]), open)
  }
  return undefined
}
