import type { Rate } from './agreement.ts'
import { BadInput, checked } from './bad-input.ts'

const COUNT = { from: 0, to: 1e6, unit: '' } as const
/** Left out at each end of a 95 % interval. */
const TAIL = 0.025
/** Halvings of the line from 0 to 1: more would move no digit of a double. */
const HALVINGS = 60

/**
 * A proportion with its exact 95 % interval (Clopper and Pearson 1934, Biometrika 26:404): it holds the
 * truth at least as often as it says, however few there are.
 *
 * @throws BadInput for counts that are no whole numbers from 0 to a million, for nobody, or for more
 * hits than tries.
 */
export function exactRate(hits: number, of: number): Rate {
  for (const [name, value] of [
    ['of', of],
    ['hits', hits]
  ] as const) {
    if (!Number.isInteger(value)) throw new BadInput(name, value, COUNT)
  }
  checked('of', of, { ...COUNT, from: 1 })
  checked('hits', hits, { ...COUNT, to: of })
  return {
    value: hits / of,
    // As small a share as would still give so many hits in one of 40 tries; the high end mirrors it.
    low: hits === 0 ? 0 : where(p => atLeast(hits, of, p) - TAIL),
    high: hits === of ? 1 : 1 - where(p => atLeast(of - hits, of, p) - TAIL),
    of
  }
}

/** Where a rising function of 0 to 1 passes nought. */
function where(rising: (p: number) => number): number {
  let low = 0
  let high = 1
  for (let n = 0; n < HALVINGS; n++) {
    const middle = (low + high) / 2
    if (rising(middle) < 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/** How likely so many hits or more are, of so many tries with a share of `p`, 0 < p < 1. */
function atLeast(hits: number, of: number, p: number): number {
  const odds = Math.log(p) - Math.log1p(-p)
  let term = of * Math.log1p(-p)
  let sum = 0
  for (let k = 0; k <= of; k++) {
    if (k >= hits) sum += Math.exp(term)
    term += Math.log(of - k) - Math.log(k + 1) + odds
  }
  return Math.min(1, sum)
}
