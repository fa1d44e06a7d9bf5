import type { Diagrams } from '../../diagrams/diagram.ts'
import { must } from '../../tree/must.ts'

/** More than any two vertices together, so that a pair of them is one number. */
const MOST_VERTICES = 2 ** 26

/** Where something is so: diagrams that are 1 for those sets of answers and 0 for the rest. */
export class Booleans {
  readonly diagrams: Diagrams
  readonly #inverse = new Map<number, number>()
  /** Pairs that are known to be so for no set of answers, as one number each. */
  readonly #apart = new Set<number>()

  constructor(diagrams: Diagrams) {
    this.diagrams = diagrams
  }

  readonly always = 1
  readonly never = 0

  /** Where a diagram gives one of these levels. */
  where(diagram: number, wanted: (level: number) => boolean): number {
    return this.diagrams.combine([diagram], ([level]) => (wanted(must(level, 'level')) ? 1 : 0))
  }

  not(a: number): number {
    const before = this.#inverse.get(a)
    if (before !== undefined) return before
    const inverse = this.where(a, level => level === 0)
    this.#inverse.set(a, inverse)
    this.#inverse.set(inverse, a)
    return inverse
  }

  and(...all: readonly number[]): number {
    return all.reduce((a, b) => (a === 1 ? b : b === 1 ? a : this.diagrams.meet(a, b)), 1)
  }

  or(...any: readonly number[]): number {
    return any.reduce((a, b) => (a === 1 || b === 1 ? 1 : this.diagrams.join(a, b)), 0)
  }

  without(a: number, b: number): number {
    if (a === 0 || b === 0) return a
    return this.and(a, this.not(b))
  }

  /** Whether there is a set of answers for which both are so: looks for one, and makes no diagram. */
  meet(a: number, b: number): boolean {
    if (a === 0 || b === 0) return false
    // Every vertex but 0 leads to 1 somewhere.
    if (a === 1 || b === 1 || a === b) return true
    const [one, other] = a < b ? [a, b] : [b, a]
    const pair = one * MOST_VERTICES + other
    if (this.#apart.has(pair)) return false
    const { diagrams } = this
    const [first, second] = [diagrams.variableOf(one), diagrams.variableOf(other)]
    const top = Math.min(first, second)
    const size = must(diagrams.sizes[top], 'size')
    for (let value = 0; value < size; value++) {
      const next = (diagram: number, variable: number): number =>
        variable === top ? must(diagrams.childrenOf(diagram)[value], 'child') : diagram
      if (this.meet(next(one, first), next(other, second))) return true
    }
    this.#apart.add(pair)
    return false
  }
}
