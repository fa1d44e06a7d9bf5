const FEWEST = 1024

/**
 * Numbers by a number and a list of numbers. Keys of text, which a Map would need, cost more to make and to
 * throw away than all that diagrams do with them.
 */
export class NumbersMap {
  readonly #firsts: number[] = []
  readonly #rests: (readonly number[])[] = []
  readonly #values: number[] = []
  readonly #hashes: number[] = []
  /** The entry before this one with the same last bits of its hash; -1 where there is none. */
  readonly #before: number[] = []
  #last = new Int32Array(FEWEST).fill(-1)

  get(first: number, rest: readonly number[]): number | undefined {
    const hash = hashOf(first, rest)
    let at = this.#last[hash & (this.#last.length - 1)] as number
    while (at >= 0) {
      if (
        this.#hashes[at] === hash &&
        this.#firsts[at] === first &&
        isSame(this.#rests[at] as readonly number[], rest)
      ) {
        return this.#values[at]
      }
      at = this.#before[at] as number
    }
    return undefined
  }

  /** Of a key that is not there yet; `rest` is kept as it is and must not change. */
  add(first: number, rest: readonly number[], value: number): void {
    if (this.#values.length >= this.#last.length) this.#grow()
    const hash = hashOf(first, rest)
    this.#firsts.push(first)
    this.#rests.push(rest)
    this.#hashes.push(hash)
    this.#link(this.#values.push(value) - 1, hash)
  }

  #link(at: number, hash: number): void {
    const place = hash & (this.#last.length - 1)
    this.#before[at] = this.#last[place] as number
    this.#last[place] = at
  }

  #grow(): void {
    this.#last = new Int32Array(this.#last.length * 2).fill(-1)
    for (const [at, hash] of this.#hashes.entries()) this.#link(at, hash)
  }
}

/** FNV-1a over 32-bit numbers (Fowler, Noll and Vo), its bits mixed once more: the low ones are used. */
function hashOf(first: number, rest: readonly number[]): number {
  let hash = Math.imul(first ^ 0x811c9dc5, 0x01000193)
  for (let i = 0; i < rest.length; i++) hash = Math.imul(hash ^ (rest[i] as number), 0x01000193)
  return hash ^ (hash >>> 15)
}

function isSame(a: readonly number[], b: readonly number[]): boolean {
  if (a.length !== b.length) return false
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false
  return true
}
