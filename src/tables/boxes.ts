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
    const cache = new Map<Cuttable, readonly Leaf[]>()
    const best = (cuttable: Cuttable): readonly Leaf[] => {
      const before = cache.get(cuttable)
      if (before !== undefined) return before
      const first = leads[cuttable.points[0] ?? 0] ?? 0
      let found: readonly Leaf[] | undefined
      if (cuttable.points.every(point => leads[point] === first))
        found = [{ box: cuttable.box, leads: first }]
      else {
        for (const [near, far] of cuttable.halves) {
          const [some, others] = [best(near), best(far)]
          if (found === undefined || some.length + others.length < found.length) {
            found = [...some, ...others]
          }
        }
      }
      const leaves = found ?? []
      cache.set(cuttable, leaves)
      return leaves
    }
    return best(whole)
  }
}

/** A box with every way to cut it in two, down to single places; equal boxes are one. */
function cuttable(sizes: readonly number[], points: readonly (readonly number[])[]): Cuttable {
  const cache = new Map<string, Cuttable>()
  const make = (box: Box): Cuttable => {
    const key = `${box}`
    const before = cache.get(key)
    if (before !== undefined) return before
    const cuttable = {
      box,
      points: points.flatMap((point, index) => (holds(box, point) ? [index] : [])),
      halves: box.flatMap(([from, to], axis) =>
        Array.from({ length: to - from }, (_, i): [Cuttable, Cuttable] => [
          make(replaced(box, axis, [from, from + i])),
          make(replaced(box, axis, [from + i + 1, to]))
        ])
      )
    }
    cache.set(key, cuttable)
    return cuttable
  }
  return make(sizes.map(size => [0, size - 1] as const))
}

function holds(box: Box, point: readonly number[]): boolean {
  return box.every(([from, to], axis) => {
    const coordinate = must(point[axis], 'point')
    return from <= coordinate && coordinate <= to
  })
}

function replaced(box: Box, axis: number, side: readonly [number, number]): Box {
  return box.map((old, index) => (index === axis ? side : old))
}
