import { must } from '../tree/must.ts'
/** From the first to the last index on each axis. */
export type Box = readonly (readonly [number, number])[]

/** A box all of whose points lead to the same. */
export interface Leaf {
  readonly box: Box
  readonly leads: number
}

interface Cuttable {
  readonly box: Box
  /** Which of the given points lie in it. */
  readonly points: readonly number[]
  readonly halves: readonly (readonly [Cuttable, Cuttable])[]
}

/**
 * Cuts a grid straight through, again and again, into the fewest boxes that each lead one way. Places
 * where none of the points lies cannot occur and go along with their neighbours, so that the boxes
 * fill the whole without overlap.
 */
export function boxesOf(
  sizes: readonly number[],
  points: readonly (readonly number[])[]
): (leads: readonly number[]) => readonly Leaf[] {
  const whole = cuttable(sizes, points)
  return leads => {
    const known = new Map<Cuttable, readonly Leaf[]>()
    const best = (at: Cuttable): readonly Leaf[] => {
      const before = known.get(at)
      if (before !== undefined) return before
      const first = leads[at.points[0] ?? 0] ?? 0
      let found: readonly Leaf[] | undefined
      if (at.points.every(point => leads[point] === first)) found = [{ box: at.box, leads: first }]
      else {
        for (const [near, far] of at.halves) {
          const [some, others] = [best(near), best(far)]
          if (found === undefined || some.length + others.length < found.length) {
            found = [...some, ...others]
          }
        }
      }
      const made = found ?? []
      known.set(at, made)
      return made
    }
    return best(whole)
  }
}

/** A box with every way to cut it in two, down to single places; equal boxes are one. */
function cuttable(sizes: readonly number[], points: readonly (readonly number[])[]): Cuttable {
  const known = new Map<string, Cuttable>()
  const make = (box: Box): Cuttable => {
    const key = `${box}`
    const before = known.get(key)
    if (before !== undefined) return before
    const made = {
      box,
      points: points.flatMap((point, index) => (holds(box, point) ? [index] : [])),
      halves: box.flatMap(([from, to], axis) =>
        Array.from({ length: to - from }, (_, i): [Cuttable, Cuttable] => [
          make(replaced(box, axis, [from, from + i])),
          make(replaced(box, axis, [from + i + 1, to]))
        ])
      )
    }
    known.set(key, made)
    return made
  }
  return make(sizes.map(size => [0, size - 1] as const))
}

function holds(box: Box, point: readonly number[]): boolean {
  return box.every(([from, to], axis) => {
    const at = must(point[axis], 'point')
    return from <= at && at <= to
  })
}

function replaced(box: Box, axis: number, side: readonly [number, number]): Box {
  return box.map((old, index) => (index === axis ? side : old))
}
