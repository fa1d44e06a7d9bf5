import type { Diagrams } from '../../tree/diagram.ts'

/** Where something is so: diagrams that are 1 for those sets of answers and 0 for the rest. */
export class Booleans {
  readonly diagrams: Diagrams
  readonly #inverse = new Map<number, number>()

  constructor(diagrams: Diagrams) {
    this.diagrams = diagrams
  }

  readonly always = 1
  readonly never = 0

  /** Where a diagram gives one of these levels. */
  where(diagram: number, wanted: (level: number) => boolean): number {
    return this.diagrams.combine([diagram], ([level]) => (wanted(level as number) ? 1 : 0))
  }

  not(a: number): number {
    const known = this.#inverse.get(a)
    if (known !== undefined) return known
    const made = this.where(a, level => level === 0)
    this.#inverse.set(a, made)
    this.#inverse.set(made, a)
    return made
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

  /** Whether there is a set of answers for which all are so: looks for one, and makes no diagram. */
  meet(...all: readonly number[]): boolean {
    const seen = new Set<string>()
    const visit = (at: readonly number[]): boolean => {
      if (at.includes(0)) return false
      if (at.every(diagram => diagram === 1)) return true
      const key = at.join()
      if (seen.has(key)) return false
      seen.add(key)
      const top = Math.min(...at.map(diagram => this.diagrams.variableOf(diagram)))
      const size = this.diagrams.sizes[top] as number
      for (let value = 0; value < size; value++) {
        const next = at.map(diagram =>
          this.diagrams.variableOf(diagram) === top
            ? (this.diagrams.childrenOf(diagram)[value] as number)
            : diagram
        )
        if (visit(next)) return true
      }
      return false
    }
    return visit(all)
  }
}
