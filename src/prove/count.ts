import type { Diagrams } from '../diagrams/diagram.ts'
import { must } from '../tree/must.ts'

/** In how many sets of answers a diagram gives each level: exact, by level. Sets of answers, not callers. */
export function countLevels(diagrams: Diagrams, diagram: number): ReadonlyMap<number, bigint> {
  const { sizes } = diagrams
  // How many ways there are to answer the variables from one on.
  const ways: bigint[] = [1n]
  for (const size of [...sizes].reverse()) ways.unshift(must(ways[0], 'way') * BigInt(size))
  const between = (from: number, to: number): bigint =>
    must(ways[from], 'way') / must(ways[to], 'way')
  const cache = new Map<number, ReadonlyMap<number, bigint>>()
  const visit = (vertex: number): ReadonlyMap<number, bigint> => {
    if (diagrams.isConstant(vertex)) return new Map([[vertex, 1n]])
    const before = cache.get(vertex)
    if (before !== undefined) return before
    const top = diagrams.variableOf(vertex)
    const sums = new Map<number, bigint>()
    for (const child of diagrams.childrenOf(vertex)) {
      const skipped = between(top + 1, diagrams.variableOf(child))
      for (const [level, count] of visit(child)) {
        sums.set(level, (sums.get(level) ?? 0n) + count * skipped)
      }
    }
    cache.set(vertex, sums)
    return sums
  }
  const skipped = between(0, diagrams.variableOf(diagram))
  return new Map([...visit(diagram)].map(([level, count]) => [level, count * skipped]))
}
