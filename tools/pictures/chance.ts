/** Gives the next number from 0 up to 1, or between two bounds. */
export type Chance = (low?: number, high?: number) => number

/** A chance that always falls the same way for the same name, so that a picture is drawn again as it was. */
export function chanceOf(name: string): Chance {
  let state = 2166136261
  for (const letter of name) state = Math.imul(state ^ letter.charCodeAt(0), 16777619)
  return (low = 0, high = 1) => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return low + (((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296) * (high - low)
  }
}
