import type { TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import { type Walk, walk } from '../evaluate/walk.ts'
import { passing } from './lenses.ts'
import { everything } from './open.ts'
import { completed } from './witness.ts'

/** One value of one coordinate, and the walk on which everything else is usual. */
export interface OneUnusual {
  readonly index: number
  readonly label: string
  readonly walk: Walk
}

const cache = new WeakMap<TreeDiagrams, readonly OneUnusual[]>()

/** The walk of every single value beside otherwise usual answers: few, and they show a lot. */
export function oneUnusual(compiled: TreeDiagrams): readonly OneUnusual[] {
  const open = everything(compiled)
  const walks =
    cache.get(compiled) ??
    compiled.variables.flatMap(({ values }, index) =>
      values.map(({ label }, value) => ({
        index,
        label,
        walk: walk(compiled.tree, completed(compiled, new Map([[index, value]]), open))
      }))
    )
  cache.set(compiled, walks)
  return walks
}

/** Whether a question lies on the walk of some set of answers; only rare ones take a diagram to tell. */
export function isReached(compiled: TreeDiagrams, question: string): boolean {
  const lies = ({ walk: { trail } }: OneUnusual) => trail.some(step => step.question === question)
  return oneUnusual(compiled).some(lies) || passing(compiled, question) !== 0
}
