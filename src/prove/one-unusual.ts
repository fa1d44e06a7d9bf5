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

const known = new WeakMap<TreeDiagrams, readonly OneUnusual[]>()

/** The walk of every single value beside otherwise usual answers: few, and they show a lot. */
export function oneUnusual(made: TreeDiagrams): readonly OneUnusual[] {
  const open = everything(made)
  const walks =
    known.get(made) ??
    made.variables.flatMap(({ values }, index) =>
      values.map(({ label }, value) => ({
        index,
        label,
        walk: walk(made.tree, completed(made, new Map([[index, value]]), open))
      }))
    )
  known.set(made, walks)
  return walks
}

/** Whether a question lies on the walk of some set of answers; only rare ones take a diagram to tell. */
export function isReached(made: TreeDiagrams, question: string): boolean {
  const lies = ({ walk: { trail } }: OneUnusual) => trail.some(step => step.question === question)
  return oneUnusual(made).some(lies) || passing(made, question) !== 0
}
