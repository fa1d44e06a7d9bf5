import type { Plan } from './plan.ts'

/** Which observations a walk may read more than once, and from where on their answers still count. */
export interface Rereading {
  /** By spot: whether what it asks may have been read before on some walk. */
  readonly again: readonly boolean[]
  /** The observations read again somewhere. */
  readonly observations: readonly string[]
  /** Whether a spot, or a later one on some walk, reads that one of them again. */
  readonly isLive: (spot: number, observation: number) => boolean
}

/** Two passes over the plan, one down and one up, with a bit for each observation. */
export function rereadingOf({ spots }: Plan): Rereading {
  const all = [...new Set(spots.map(({ asks }) => asks))]
  const above = bits(spots.length, all.length)
  const place = new Map(all.map((id, index) => [id, index]))
  const again = spots.map(({ asks, ways }, index) => {
    const own = place.get(asks) as number
    const read = above.has(index, own)
    for (const { to } of ways) {
      if (to < 0) continue
      above.addAll(to, index)
      above.add(to, own)
    }
    return read
  })
  const observations = [
    ...new Set(spots.filter((_, index) => again[index]).map(({ asks }) => asks))
  ]
  const live = bits(spots.length, observations.length)
  for (let index = spots.length - 1; index >= 0; index--) {
    const { asks, ways } = spots[index] as (typeof spots)[number]
    if (again[index]) live.add(index, observations.indexOf(asks))
    for (const { to } of ways) if (to >= 0) live.addAll(index, to)
  }
  return { again, observations, isLive: live.has }
}

/** A set of small numbers for each row. */
function bits(rows: number, width: number) {
  const words = Math.max(1, Math.ceil(width / 32))
  const held = new Uint32Array(rows * words)
  return {
    has: (row: number, one: number): boolean =>
      (((held[row * words + (one >>> 5)] as number) >>> (one & 31)) & 1) === 1,
    add: (row: number, one: number): void => {
      const cell = row * words + (one >>> 5)
      held[cell] = (held[cell] as number) | (1 << (one & 31))
    },
    addAll: (row: number, from: number): void => {
      for (let word = 0; word < words; word++) {
        const cell = row * words + word
        held[cell] = (held[cell] as number) | (held[from * words + word] as number)
      }
    }
  }
}
