import type { Interval } from './answers.ts'
import type { Range } from './observation.ts'

/** Whether the number lies in the range. */
export function holds(range: Range, x: number): boolean {
  return (
    (range.atLeast === undefined || x >= range.atLeast) &&
    (range.over === undefined || x > range.over) &&
    (range.under === undefined || x < range.under) &&
    (range.atMost === undefined || x <= range.atMost)
  )
}

/** Whether the range holds all of the interval. Ranges have no holes, so its two ends decide. */
export function holdsAll(range: Range, interval: Interval): boolean {
  return holds(range, interval.low) && holds(range, interval.high)
}

/** A place where a measure's line is cut: just below the number, or just above it. */
export interface Cut {
  readonly at: number
  readonly side: 'below' | 'above'
}

/** The cuts that a range makes: `under` and `at-least` just below, `at-most` and `over` just above. */
export function cutsOf(range: Range): readonly Cut[] {
  const cuts: Cut[] = []
  for (const limit of [range.atLeast, range.under]) {
    if (limit !== undefined) cuts.push({ at: limit, side: 'below' })
  }
  for (const limit of [range.over, range.atMost]) {
    if (limit !== undefined) cuts.push({ at: limit, side: 'above' })
  }
  return cuts
}

/** Sorted along the line, each once. */
export function sortCuts(cuts: readonly Cut[]): readonly Cut[] {
  const key = (cut: Cut) => `${cut.at}${cut.side}`
  const once = new Map(cuts.map(cut => [key(cut), cut]))
  return [...once.values()].sort((a, b) => a.at - b.at || (a.side === 'below' ? -1 : 1))
}
