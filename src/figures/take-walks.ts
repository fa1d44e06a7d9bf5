import { randomNumbers } from '../science/random-numbers.ts'
import { type Course, type Halt, keyOf } from './course.ts'
import type { Likely, Shares } from './shares.ts'
import { Tally } from './tally.ts'

/** How figures were found: from every walk with its share, or from so many walks drawn at random. */
export type Method =
  | { readonly kind: 'exact' }
  | { readonly kind: 'sampled'; readonly walks: number; readonly seed: number }

/** How much may be done before every walk is too many. */
export interface Limits {
  /** Halts that are told apart, over all lengths. */
  readonly halts: number
  readonly walks: number
  readonly seed: number
}

export const LIMITS: Limits = { halts: 400_000, walks: 20_000, seed: 20_261_125 }

/**
 * Walks as the tree asks, or with one observation asked before all others. Where the shares of a screen
 * make less than 1 together, the walks that give the missing answers are left out.
 */
export function takeWalks(
  course: Course,
  shares: Shares,
  limits: Limits,
  first?: string
): { readonly tally: Tally; readonly method: Method } {
  const exact = allWalks(course, shares, limits.halts, first)
  if (exact !== undefined) return { tally: exact, method: { kind: 'exact' } }
  const { walks, seed } = limits
  const tally = someWalks(course, shares, limits, first)
  return { tally, method: { kind: 'sampled', walks, seed } }
}

/** Every walk, halt by halt, those that have come to the same one together; undefined beyond the limit. */
function allWalks(
  course: Course,
  shares: Shares,
  most: number,
  first: string | undefined
): Tally | undefined {
  const tally = new Tally(course)
  let [count, screens] = [0, 0]
  let layer = new Map<number, { readonly halt: Halt; share: number }>()
  const come = (into: typeof layer, halt: Halt, wasSettled: boolean, share: number) => {
    tally.arrive(halt, wasSettled, screens, share)
    if (halt.route.asks === null) return
    const key = keyOf(halt)
    const before = into.get(key)
    if (before) before.share += share
    else into.set(key, { halt, share })
  }
  if (first === undefined) come(layer, course.start(), false, 1)
  else {
    screens++
    for (const likely of answersTo(shares, first)) {
      come(layer, course.toldFirst(first, likely), course.start().sides.settled, likely.share)
    }
  }
  while (layer.size > 0) {
    count += layer.size
    if (count > most) return undefined
    const next: typeof layer = new Map()
    screens++
    for (const { halt, share } of layer.values()) {
      for (const likely of answersTo(shares, halt.route.asks)) {
        come(next, course.answered(halt, likely), halt.sides.settled, share * likely.share)
      }
    }
    layer = next
  }
  return tally
}

function someWalks(
  course: Course,
  shares: Shares,
  { walks, seed }: Limits,
  first: string | undefined
): Tally {
  const tally = new Tally(course)
  const random = randomNumbers(seed)
  const share = 1 / walks
  for (let walk = 0; walk < walks; walk++) {
    let [screens, wasSettled] = [0, false]
    let halt: Halt | undefined = course.start()
    if (first !== undefined) {
      wasSettled = halt.sides.settled
      const likely = drawn(answersTo(shares, first), random())
      if (likely === undefined) continue
      halt = course.toldFirst(first, likely)
      screens++
    }
    while (halt !== undefined) {
      tally.arrive(halt, wasSettled, screens++, share)
      wasSettled = halt.sides.settled
      if (halt.route.asks === null) break
      const likely = drawn(answersTo(shares, halt.route.asks), random())
      halt = likely && course.answered(halt, likely)
    }
  }
  return tally
}

const answersTo = (shares: Shares, asks: string | null): readonly Likely[] =>
  shares[asks ?? ''] ?? []

/** The answer that a number from 0 to 1 falls on; undefined where the shares leave it out. */
export function drawn(likely: readonly Likely[], number: number): Likely | undefined {
  let left = number
  for (const one of likely) {
    left -= one.share
    if (left < 0) return one
  }
  // A last share that rounding has made too small is not a missing answer.
  return left < 1e-9 ? likely.at(-1) : undefined
}
