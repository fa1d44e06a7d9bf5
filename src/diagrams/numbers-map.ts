const FEWEST = 1024
/** In place of an entry. */
const NONE = -1

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
  #last = new Int32Array(FEWEST).fill(NONE)

  get(first: number, rest: readonly number[]): number | undefined {
    const hash = hashOf(first, rest)
    let place = this.#last[hash & (this.#last.length - 1)] ?? NONE
    while (place >= 0) {
      if (
        this.#hashes[place] === hash &&
        this.#firsts[place] === first &&
        isSame(this.#rests[place], rest)
      ) {
        return this.#values[place]
      }
      place = this.#before[place] ?? NONE
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

  #link(entry: number, hash: number): void {
    const place = hash & (this.#last.length - 1)
    this.#before[entry] = this.#last[place] ?? NONE
    this.#last[place] = entry
  }

  #grow(): void {
    this.#last = new Int32Array(this.#last.length * 2).fill(NONE)
    for (const [entry, hash] of this.#hashes.entries()) this.#link(entry, hash)
  }
}

/** FNV-1a over 32-bit numbers (Fowler, Noll and Vo), its bits mixed once more: the low ones are used. */
function hashOf(first: number, rest: readonly number[]): number {
  let hash = Math.imul(first ^ 0x811c9dc5, 0x01000193)
  for (const number of rest) hash = Math.imul(hash ^ number, 0x01000193)
  return hash ^ (hash >>> 15)
}

function isSame(a: readonly number[] | undefined, b: readonly number[]): boolean {
  if (a?.length !== b.length) return false
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false
  return true
}
