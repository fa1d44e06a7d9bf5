import type { TreeDiagrams } from '../../diagrams/tree-diagrams.ts'
import type { Lens } from '../../tree/lens.ts'
import { must } from '../../tree/must.ts'
import { TRACKS } from '../../tree/observation.ts'
import { everything } from '../open.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'
import { ofAnswer } from '../unsure.ts'
import { completed, shortestTo } from '../witness.ts'

/**
 * The answers of a choice stand most worrying first: with all else equal no side of the outcome is
 * gentler for an answer than for the one listed after it. So of two told the one listed first can count.
 * Choices whose answers are kinds say `unordered: true` and are left out. Counted by neighbors.
 */
export const answersAreListedByCaution: Property = {
  id: 'answers-are-listed-by-caution',
  kind: 'law',
  needsWalks: true,
  prove(compiled, places) {
    const cases = neighborsOf(compiled).map(neighbors => {
      const answers = gentlerFirst(compiled, neighbors)
      const { index, before, after } = neighbors
      const variable = compiled.variables[index]
      const [first, next] = [variable?.values[before]?.label, variable?.values[after]?.label]
      if (answers === undefined || variable === undefined || first === undefined) return []
      return [
        ofAnswer('listed-too-early', compiled, variable, first, places, answers, {
          next: next ?? ''
        })
      ]
    })
    return standing(this.id, this.kind, cases)
  }
}

/** Two answers to a choice, one listed right after the other. */
interface Neighbors {
  readonly index: number
  readonly before: number
  readonly after: number
}

function neighborsOf(compiled: TreeDiagrams): readonly Neighbors[] {
  return compiled.variables.flatMap(({ observation: id, values }, index) => {
    const observation = compiled.tree.observations[id]
    if (observation?.kind !== 'choice' || observation.unordered === true) return []
    // Unsure is no answer of the list: what not knowing comes to has laws of its own.
    const listed = values.flatMap(({ answer }, value) => (answer === 'unsure' ? [] : [value]))
    return listed
      .slice(1)
      .map((after, place) => ({ index, before: must(listed[place], 'answer'), after }))
  })
}

/** A set of answers with the first of the two for which some side is gentler than with the second. */
function gentlerFirst(compiled: TreeDiagrams, { index, before, after }: Neighbors) {
  const { diagrams } = compiled
  const open = everything(compiled)
  const sides: readonly Lens[] = [...TRACKS, 'use']
  for (const lens of sides) {
    const taking = (value: number) => diagrams.restrict(compiled.of(lens), index, value)
    const [first, second] = [taking(before), taking(after)]
    const less = diagrams.combine([first, second], ([a = 0, b = 0]) => (a < b ? 1 : 0))
    const choice = shortestTo(compiled, less, open, level => level === 1)
    if (choice !== undefined)
      return completed(compiled, new Map([...choice, [index, before]]), open)
  }
  return undefined
}
