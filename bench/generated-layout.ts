import type { Branch } from '../src/tree/tree.ts'
import type { Pick } from './pick.ts'

/** Picks where an answer leads. */
export type Leads = () => Branch['leads']

/** Where a walk ends on which nothing was wrong. */
export const GENTLE_ENDS = ['normal-growth', 'normal-growth', 'wait-and-recheck'] as const

/** How many questions ask each observation of the body: one the first, at most twice as many each next. */
export function layersOf(depth: number, budget: number): readonly number[] {
  const widths = (cap: number) => {
    let width = 1
    return Array.from({ length: depth }, (_, index) => {
      width = index === 0 ? 1 : Math.min(cap, width * 2)
      return width
    })
  }
  const sum = (all: readonly number[]) => all.reduce((total, one) => total + one, 0)
  if (budget < depth) throw new RangeError(`${budget} questions cannot ask ${depth} observations`)
  let cap = 1
  while (sum(widths(cap + 1)) <= budget && cap < budget) cap++
  const sizes = [...widths(cap)]
  // What is left over widens the last layers, one by one and round again.
  const widest = sizes.filter(width => width < cap).length
  for (let left = budget - sum(sizes), index = depth - 1; left > 0; left--, index--) {
    if (index <= widest) index = depth - 1
    sizes[index] = (sizes[index] as number) + 1
  }
  return sizes
}

/** Which questions stand where. */
export interface Names {
  readonly all: readonly string[]
  readonly layers: readonly (readonly string[])[]
  readonly gates: readonly string[]
  readonly again: readonly string[]
  readonly tails: readonly string[]
  /** Where the gates and the questions asked again lead when nothing is wrong, in a row over the body. */
  readonly afterGate: readonly string[]
  readonly afterAgain: readonly string[]
  /** Body questions whose usual way leads through a gate or a question asked again. */
  readonly through: ReadonlyMap<string, string>
}

/** Numbers the questions: the screens, the layers of the body, then gates, questions asked again, tails. */
export function namesOf(screens: number, widths: readonly number[], some: number): Names {
  let next = 0
  const take = (count: number) => Array.from({ length: count }, () => `q${next++}`)
  const first = take(screens)
  const layers = widths.map(take)
  const [gates, again, tails] = [take(some), take(some), take(some)]
  // From the second layer to the last but one, spread evenly.
  const inner = layers.slice(2).flat()
  const spread = (count: number, shift: number) =>
    Array.from(
      { length: count },
      (_, index) =>
        inner[Math.floor(((index + shift) * inner.length) / (count + 1)) % inner.length] as string
    )
  const [afterGate, afterAgain] = [spread(some, 0.4), spread(some, 0.8)]
  const through = new Map<string, string>()
  for (const [index, to] of afterGate.entries()) through.set(to, gates[index] as string)
  for (const [index, to] of afterAgain.entries()) {
    if (!through.has(to)) through.set(to, again[index] as string)
  }
  return {
    all: [...first, ...layers.flat()],
    layers,
    gates,
    again,
    tails,
    afterGate,
    afterAgain,
    through
  }
}

/** The usual way on: to the next layer, a few times further; now and then to an end. */
export function onward(
  { layers, through }: Names,
  depth: number,
  column: number,
  turn: number,
  pick: Pick,
  tail: Leads
): Branch['leads'] {
  const here = layers[depth] as readonly string[]
  const below = layers[depth + 1]
  if (below === undefined) return turn === 0 ? tail() : { end: pick.from(GENTLE_ENDS) }
  const wanted =
    below.length > here.length ? column * Math.ceil(below.length / here.length) + turn : column
  // Each question of the next layer is led to by one above it, whatever else is picked.
  const owed = turn < Math.ceil(below.length / here.length) && wanted < below.length
  const further = layers[depth + 1 + pick.below(3)] ?? below
  const to = owed ? (below[wanted] as string) : pick.from(further)
  return { to: through.get(to) ?? to }
}
