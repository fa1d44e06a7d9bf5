import { Diagrams } from '../../diagrams/diagram.ts'
import { TreeDiagrams } from '../../diagrams/tree-diagrams.ts'
import type { Lens } from '../../tree/lens.ts'
import { TRACKS } from '../../tree/observation.ts'
import type { Tree } from '../../tree/tree.ts'
import { jointSpace } from '../joint-space.ts'
import type { Ledger, Property } from '../property.ts'
import { PROPERTIES, withOpenCases } from '../prove.ts'
import type { Fault } from './faults.ts'

const SIDES: readonly Lens[] = [...TRACKS, 'use']

/** What a fault does to outcomes, and the property that finds it; null where none does. */
export interface Judged {
  readonly fault: Fault
  readonly effect: 'stricter' | 'less cautious'
  readonly foundBy: string | null
}

/**
 * Judges a fault by the properties of a tree; null where it changes no outcome. `whole`: the tree's own
 * diagrams, whose vertices many faults can share.
 */
export function judge(
  tree: Tree,
  fault: Fault,
  ledger: Ledger | undefined,
  properties: readonly Property[] = PROPERTIES,
  whole: TreeDiagrams = new TreeDiagrams(tree)
): Judged | null {
  const { before, after } = diagramsOfBoth(whole, fault)
  const { diagrams } = before
  const changed = SIDES.filter(side => before.of(side) !== after.of(side))
  if (changed.length === 0) return null
  const gentler = (side: Lens) =>
    diagrams.combine([before.of(side), after.of(side)], ([was = 0, is = 0]) => (is < was ? 1 : 0))
  const effect = changed.some(side => gentler(side) !== 0) ? 'less cautious' : 'stricter'
  // What the tree itself lists as open would be found with any fault, and shows none.
  const found = properties.find(
    one => withOpenCases(tree, {}, one.prove(after, {}, ledger)).standing === 'refuted'
  )
  return { fault, effect, foundBy: found?.id ?? null }
}

/** Both trees over one space. A fault that moves no limit shares the vertices that are known already. */
function diagramsOfBoth(before: TreeDiagrams, fault: Fault) {
  const { tree } = before
  if (fault.kind !== 'moved limit' && fault.kind !== 'deleted branch') {
    return { before, after: new TreeDiagrams(fault.tree, before.variables, before.diagrams) }
  }
  const { variables } = jointSpace(tree, fault.tree)
  const diagrams = new Diagrams(variables.map(({ values }) => values.length))
  return {
    before: new TreeDiagrams(tree, variables, diagrams),
    after: new TreeDiagrams(fault.tree, variables, diagrams)
  }
}
