import { filled, type Layer, round, stroked } from './layer.ts'
import { arc, around, closed, type Point, pairsOf, type Spots, spotsOf, taper } from './line.ts'
import { within } from './mouth.ts'
import { TINT } from './tints.ts'

/** The one sign of wetness: light lying on it. */
export const highlight =
  (spot: Point, radius: number, { from = 195, to = 262, width = 5 } = {}): Layer =>
  () =>
    filled(taper(arc(spot, radius, from, to), width), TINT.white)

/** What more there is to a group of islands: which carry its light, and the outline of those run together. */
export interface Grouping {
  readonly lit?: readonly number[]
  readonly merged?: readonly number[]
  readonly tint?: string
  readonly edge?: string
}

/** Flat wet islands; those that touch run together under one light. */
export const islands =
  (
    list: Spots,
    { lit = [], merged = [], tint = TINT.cream, edge = TINT.filmEdge }: Grouping = {}
  ): Layer =>
  chance => {
    const spots = spotsOf(list)
    const shapes = spots.map(([x, y, r]) =>
      closed(within(around(chance, [x, y], r, { rough: 0.09, count: 8 })))
    )
    const line = [...shapes, closed(pairsOf(merged))].join('')
    const lights = spots.filter((_, i) => lit.includes(i))
    return (
      stroked(line, edge, 4) +
      filled(line, tint) +
      lights
        .map(([x, y, r]) => highlight([x, y], r * 0.66, { width: Math.max(3, r * 0.3) })(chance))
        .join('')
    )
  }

/** Clear domes of gas under a wet film, each with its light and the dark of the liquid below. */
export const blisters =
  (list: Spots, tint = '#F0DEB6', edge: string = TINT.teaDeep): Layer =>
  chance =>
    spotsOf(list)
      .map(([x, y, r]) => {
        const shape = closed(around(chance, [x, y], r, { rough: 0.03, count: 9 }))
        return (
          filled(shape, tint) +
          stroked(shape, edge, 1.8) +
          filled(taper(arc([x, y], r * 0.74, 5, 125), r * 0.3), '#C9A566') +
          highlight([x, y], r * 0.6, { width: Math.max(2.6, r * 0.4) })(chance)
        )
      })
      .join('')

/** Round bubbles of gas. */
export const bubbles =
  (list: Spots, tint: string, edge: string): Layer =>
  () => {
    const rings = spotsOf(list)
      .map(([x, y, r]) => round([x, y], r))
      .join('')
    return `<path fill="${tint}" stroke="${edge}" stroke-width="1.8" d="${rings}"/>`
  }

/** Foam: bubbles run into one, with a few still to be told apart. */
export const foam =
  (list: Spots): Layer =>
  chance => {
    const rings = spotsOf(list)
      .map(([x, y, r]) => round([x, y], r))
      .join('')
    const inner = spotsOf(list)
      .filter((_, i) => i % 3 === 0)
      .flatMap(([x, y, r]) => [x - r * 0.2, y, r * 0.4])
    return (
      stroked(rings, TINT.shade, 3.4) +
      filled(rings, '#FBF1DA') +
      bubbles(inner, TINT.white, TINT.shade)(chance)
    )
  }
