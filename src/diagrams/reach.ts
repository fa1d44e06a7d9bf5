import type { Diagrams } from './diagram.ts'

/** For each variable in order, which of its values are left open. */
export type Open = readonly (readonly boolean[])[]

/** The levels that a diagram can still give when only open values are taken. */
export function reachable(diagrams: Diagrams, diagram: number, open: Open): ReadonlySet<number> {
  const levels = new Set<number>()
  const seen = new Set<number>()
  const visit = (vertex: number): void => {
    if (seen.has(vertex)) return
    seen.add(vertex)
    if (diagrams.isConstant(vertex)) {
      levels.add(vertex)
      return
    }
    const allowed = open[diagrams.variableOf(vertex)]
    diagrams.childrenOf(vertex).forEach((child, value) => {
      if (allowed?.[value]) visit(child)
    })
  }
  visit(diagram)
  return levels
}
