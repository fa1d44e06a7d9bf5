import { type Exit, keyOf } from './exits.ts'

/** What a walk remembers, as numbers: equal for equal memories. */
export class Memories {
  readonly #all: (readonly (readonly [number, Exit, string])[])[] = [[]]
  readonly #known = new Map<string, number>([['', 0]])

  /** How many different ones there have been. */
  get count(): number {
    return this.#all.length
  }

  recall(memory: number, place: number): Exit | undefined {
    if (memory === 0) return undefined
    return this.#all[memory]?.find(([one]) => one === place)?.[1]
  }

  add(memory: number, place: number, exit: Exit): number {
    const text = `${place}:${exit.standIn} ${keyOf(exit.taken)}`
    const entry = [place, exit, text] as const
    return this.#number([...(this.#all[memory] ?? []), entry].sort(([a], [b]) => a - b))
  }

  kept(memory: number, isKept: (place: number) => boolean): number {
    if (memory === 0) return 0
    const all = this.#all[memory] ?? []
    return all.every(([place]) => isKept(place))
      ? memory
      : this.#number(all.filter(([place]) => isKept(place)))
  }

  #number(entries: readonly (readonly [number, Exit, string])[]): number {
    const key = entries.map(([, , text]) => text).join('|')
    const before = this.#known.get(key)
    if (before !== undefined) return before
    this.#known.set(key, this.#all.length)
    return this.#all.push(entries) - 1
  }
}
