/** Chance, the same for the same seed. */
export interface Pick {
  below(limit: number): number
  from<T>(all: readonly T[]): T
}

/** Chance from a seed (mulberry32). */
export function picks(seed: number): Pick {
  let state = seed
  const below = (limit: number) => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32) * limit)
  }
  return { below, from: all => all[below(all.length)] as (typeof all)[number] }
}
