import { randomNumbers } from '../../src/science/random-numbers.ts'

/** Gives the next number from 0 up to 1, or between two bounds. */
export type Chance = (low?: number, high?: number) => number

/** A chance that always falls the same way for the same name, so that a picture is drawn again as it was. */
export function chanceOf(name: string): Chance {
  let seed = 2166136261
  for (const letter of name) seed = Math.imul(seed ^ letter.charCodeAt(0), 16777619)
  const random = randomNumbers(seed)
  return (low = 0, high = 1) => low + random() * (high - low)
}
