import { level, type Outcome, useLevel } from '../tree/caution.ts'
import type { Lens } from '../tree/lens.ts'
import type { Tree } from '../tree/tree.ts'

/** The level of an outcome on one side: what a diagram says of the same answers. */
export function levelIn(tree: Tree, lens: Lens, outcome: Outcome): number {
  if (typeof lens === 'object') return outcome.notes.includes(lens.note) ? 1 : 0
  return lens === 'use' ? useLevel(outcome.use) : level(tree, lens, outcome[lens])
}
