import { filled, type Layer, round, stroked } from './layer.ts'
import { arc, around, closed, numbers, type Point, taper } from './line.ts'
import { within } from './mouth.ts'
import { TINT } from './tints.ts'

/** The one sign of wetness: light lying on it. */
export const highlight =
  (at: Point, radius: number, { from = 195, to = 262, width = 5 } = {}): Layer =>
  () =>
    filled(taper(arc(at, radius, from, to), width), TINT.white)

/** One wet island: where it lies, how wide, and whether it carries the light of its group. */
export type Island = readonly [x: number, y: number, r: number, lit?: boolean]

/** Flat wet islands; those that touch run together under one light. */
export const islands =
  (
    spots: readonly Island[],
    bridges: readonly (readonly [number, number])[] = [],
    { tint = TINT.cream as string, edge = TINT.filmEdge as string } = {}
  ): Layer =>
  chance => {
    const shapes = spots
      .map(([x, y, r]) => closed(within(around(chance, [x, y], r, { rough: 0.05, count: 9 }))))
      .join('')
    const necks = bridges
      .map(([a, b]) => [spots[a], spots[b]] as const)
      .map(([a, b]) => (a && b ? `M${numbers(a[0], a[1])}L${numbers(b[0], b[1])}` : ''))
      .join('')
    const narrow = bridges.map(([a, b]) => Math.min(spots[a]?.[2] ?? 0, spots[b]?.[2] ?? 0))
    const width = Math.round(Math.min(...narrow) * 1.2)
    const joined = (color: string, more: number) =>
      necks === '' ? '' : stroked(necks, color, width + more)
    return (
      joined(edge, 4) +
      stroked(shapes, edge, 4) +
      joined(tint, 0) +
      filled(shapes, tint) +
      spots
        .filter(([, , , lit]) => lit)
        .map(([x, y, r]) => highlight([x, y], r * 0.66, { width: Math.max(2.5, r * 0.24) })(chance))
        .join('')
    )
  }

/** Clear domes of gas under a wet film, each with its light and the dark of the liquid below. */
export const blisters =
  (spots: readonly Island[], { tint = '#EBD7AC', edge = TINT.teaDeep as string } = {}): Layer =>
  chance =>
    spots
      .map(([x, y, r]) => {
        const shape = closed(around(chance, [x, y], r, { rough: 0.03, count: 9 }))
        return (
          filled(shape, tint) +
          stroked(shape, edge, 1.8) +
          filled(taper(arc([x, y], r * 0.72, 20, 110), r * 0.26), TINT.filmEdge) +
          highlight([x, y], r * 0.6, { width: Math.max(2.4, r * 0.36) })(chance)
        )
      })
      .join('')

/** Round bubbles of gas. */
export const bubbles =
  (spots: readonly Island[], tint: string, edge: string): Layer =>
  () => {
    const rings = spots.map(([x, y, r]) => round([x, y], r)).join('')
    return `<path fill="${tint}" stroke="${edge}" stroke-width="1.8" d="${rings}"/>`
  }
