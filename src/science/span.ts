/** What a number can truly be: `low` ≤ `mid` ≤ `high`, in one unit. A span of no width is exact. */
export interface Span {
  readonly low: number
  readonly mid: number
  readonly high: number
}

/** Whether something holds of every number in a span, of none, or of some (law 8: never a pass). */
export type Surely = 'yes' | 'no' | 'not-known'

/** A span of no width. */
export const exactly = (value: number): Span => ({ low: value, mid: value, high: value })

/** A reading with half the width of what it can truly be. */
export const plusMinus = (mid: number, half: number): Span => ({
  low: mid - half,
  mid,
  high: mid + half
})

/** The span that holds all of some numbers; `mid` is the one meant to be central. */
export const spanning = (mid: number, all: readonly number[]): Span => ({
  low: Math.min(mid, ...all),
  mid,
  high: Math.max(mid, ...all)
})

/** Applies a function that only rises to all of a span. */
export const rising = ({ low, mid, high }: Span, f: (x: number) => number): Span => ({
  low: f(low),
  mid: f(mid),
  high: f(high)
})

/** Applies a function that only falls to all of a span. */
export const falling = ({ low, mid, high }: Span, f: (x: number) => number): Span => ({
  low: f(high),
  mid: f(mid),
  high: f(low)
})

/** Whether all of a span is at most a limit. */
export function surelyAtMost({ low, high }: Span, limit: number): Surely {
  if (high <= limit) return 'yes'
  return low > limit ? 'no' : 'not-known'
}
