import type { Chance } from './chance.ts'
import { filled, type Layer, stroked, strokes } from './layer.ts'
import { arc, around, closed, type Point, taper } from './line.ts'
import { TINT } from './tints.ts'

/** The colors of a growth of mold: its pale hair, the dark of its core, and what it stands on. */
export interface Mold {
  readonly hair: string
  readonly core: string
  readonly ground: string
  /** How much of it the core takes up. */
  readonly spread: number
}

const mold = (core: string, ground: string, spread: number, hair: string = TINT.white): Mold => ({
  hair,
  core,
  ground,
  spread
})

/** Mold as it is met: young and white, gone to spore in its middle, or dark all through. */
export const MOLD = {
  white: mold('#8C7F65', '#E6DAC0', 0.46),
  young: mold('#A3977C', '#EFE6D2', 0.34),
  centers: mold(TINT.black, '#E6DAC0', 0.34),
  green: mold(TINT.greenDark, '#5F8B75', 0.62),
  black: mold(TINT.black, '#57524B', 0.72, '#E2DCD0'),
  gray: mold('#4C4843', '#8E887E', 0.66)
} as const

/** The thin dark hairs behind the pale ones, so that white shows on cream. */
export const EDGE = '#7D6C4C'

/** Where hairs of one kind leave a growth, as shares of its radius, and how far they stray. */
interface Fringe {
  readonly count: number
  readonly inner: number
  readonly outer: number
  readonly length: number
  readonly stray: number
}

function outward(chance: Chance, [x, y]: Point, r: number, fringe: Fringe) {
  const { count, inner, outer, length, stray } = fringe
  const many = Math.round(count * r)
  return Array.from({ length: many }, (_, i) => {
    const angle = (6.2832 * i) / many + chance(-0.25, 0.25)
    const lobes = 0.98 + 0.11 * Math.sin(angle * 3 + x) + 0.07 * Math.sin(angle * 5 + y)
    const start = r * lobes * Math.sqrt(chance(inner * inner, outer * outer))
    const lean = angle + chance(-stray, stray)
    const reach = r * chance(length * 0.5, length)
    return [
      [x + Math.cos(angle) * start, y + Math.sin(angle) * start],
      [Math.cos(lean) * reach, Math.sin(lean) * reach]
    ] as const satisfies readonly [Point, Point]
  })
}

/** A tuft of mold from above: never outlined, hair leaving it all round, a darker core, a pale rim. */
export const tuft =
  (spot: Point, r: number, kind: Mold = MOLD.white): Layer =>
  chance => {
    const ring = (
      count: number,
      inner: number,
      outer: number,
      length: number,
      stray: number,
      bow = 0
    ) => strokes(outward(chance, spot, r, { count, inner, outer, length, stray }), bow)
    return (
      filled(closed(around(chance, spot, r * 0.72, { rough: 0.14 })), kind.ground) +
      stroked(ring(2, 0.7, 0.94, 0.4, 0.7, 0.3), EDGE, 0.7) +
      stroked(ring(5.6, 0.55, 0.92, 0.46, 0.8, 0.3), kind.hair, 0.9) +
      stroked(ring(2.6, 0.1, 0.66, 0.3, 1.9), kind.hair, 0.8) +
      stroked(ring(4.4, 0.02, kind.spread, 0.26, 2.6), kind.core, 0.9)
    )
  }

/** A dusting of dry powder: a dull patch, grains thick in its middle and thinning out. */
export const powder =
  (spot: Point, r: number, { count = 90, patch = '#DCC79A' } = {}): Layer =>
  chance => {
    const dust = (many: number, reach: number) =>
      strokes(
        Array.from({ length: Math.round(many) }, () => {
          const angle = chance(0, 6.28)
          const far = r * chance() ** reach
          return [
            [spot[0] + Math.cos(angle) * far, spot[1] + Math.sin(angle) * far],
            [0, 0]
          ] as const
        })
      )
    return (
      filled(closed(around(chance, spot, r * 0.62, { rough: 0.2 })), patch) +
      stroked(dust(count * 0.4, 0.5), TINT.dust, 1.3) +
      stroked(dust(count, 0.55), TINT.white, 1.5) +
      stroked(dust(count * 0.4, 0.9), TINT.white, 2.6) +
      stroked(dust(count * 0.3, 0.8), TINT.dust, 1.2)
    )
  }

/** A round raised dry colony: a cushion with a shaded foot, a pale rim with hair, a darker core. */
export const colony =
  (spot: Point, r: number, kind: Mold = MOLD.white): Layer =>
  chance => {
    const ring = (share: number, rough = 0.03) =>
      closed(around(chance, spot, r * share, { rough, count: 13 }))
    const hair = (count: number, inner: number, outer: number, length: number, stray = 0.5) =>
      strokes(outward(chance, spot, r, { count, inner, outer, length, stray }))
    return (
      stroked(hair(4, 0.86, 0.96, 0.22), EDGE, 0.7) +
      filled(ring(0.92), '#F4EDDD') +
      filled(taper(arc(spot, r * 0.82, -30, 130, 7), r * 0.2), '#C6B48E') +
      stroked(hair(7, 0.78, 0.96, 0.22), kind.hair, 0.9) +
      stroked(ring(0.62), '#D2C3A0', 1.3) +
      filled(ring(0.36, 0.12), '#B4A684') +
      stroked(hair(4, 0.02, 0.42, 0.2, 2.6), kind.core, 0.9)
    )
  }
