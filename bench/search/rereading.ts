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
  const place = new Map(all.map((id, at) => [id, at]))
  const again = spots.map(({ asks, ways }, at) => {
    const own = place.get(asks) as number
    const read = above.has(at, own)
    for (const { to } of ways) {
      if (to < 0) continue
      above.addAll(to, at)
      above.add(to, own)
    }
    return read
  })
  const observations = [...new Set(spots.filter((_, at) => again[at]).map(({ asks }) => asks))]
  const live = bits(spots.length, observations.length)
  for (let at = spots.length - 1; at >= 0; at--) {
    const { asks, ways } = spots[at] as (typeof spots)[number]
    if (again[at]) live.add(at, observations.indexOf(asks))
    for (const { to } of ways) if (to >= 0) live.addAll(at, to)
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
      const at = row * words + (one >>> 5)
      held[at] = (held[at] as number) | (1 << (one & 31))
    },
    addAll: (row: number, from: number): void => {
      for (let word = 0; word < words; word++) {
        const at = row * words + word
        held[at] = (held[at] as number) | (held[from * words + word] as number)
      }
    }
  }
}
