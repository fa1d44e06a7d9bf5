import type { Diagrams } from './diagram.ts'

/** For each variable in order, which of its values are left open. */
export type Open = readonly (readonly boolean[])[]

/** The levels that a diagram can still give when only open values are taken. */
export function reachable(diagrams: Diagrams, diagram: number, open: Open): ReadonlySet<number> {
  const levels = new Set<number>()
  const seen = new Set<number>()
  const visit = (at: number): void => {
    if (seen.has(at)) return
    seen.add(at)
    if (diagrams.isConstant(at)) {
      levels.add(at)
      return
    }
    const allowed = open[diagrams.variableOf(at)]
    diagrams.childrenOf(at).forEach((child, value) => {
      if (allowed?.[value]) visit(child)
    })
  }
  visit(diagram)
  return levels
}
