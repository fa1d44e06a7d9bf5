import { randomNumbers } from '../src/science/random-numbers.ts'

/** Chance, the same for the same seed. */
export interface Pick {
  below(limit: number): number
  from<T>(all: readonly T[]): T
}

/** Chance from a seed. */
export function picks(seed: number): Pick {
  const random = randomNumbers(seed)
  const below = (limit: number) => Math.floor(random() * limit)
  return { below, from: all => all[below(all.length)] as (typeof all)[number] }
}
