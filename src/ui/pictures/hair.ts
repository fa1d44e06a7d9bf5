import type { Chance } from './chance.ts'
import { filled, type Layer, stroked, strokes } from './layer.ts'
import { around, closed, type Point } from './line.ts'
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

/** Mold as it is met: young and white, in spore, or dark all through. */
export const MOLD = {
  white: mold('#A79A7E', '#C9B68E', 0.42),
  green: mold(TINT.greenDark, '#6F937F', 0.62),
  black: mold(TINT.black, '#6B665E', 0.7, '#D8D2C6'),
  gray: mold('#5F5B54', '#9A948A', 0.66),
  tan: mold('#5E4320', '#A98B58', 0.6, '#F3E3BE'),
  pink: mold(TINT.pinkDark, '#D98A98', 0.6)
} as const

const EDGE = '#85765A'

function outward(
  chance: Chance,
  [x, y]: Point,
  r: number,
  {
    count,
    inner,
    outer,
    length,
    stray
  }: Record<'count' | 'inner' | 'outer' | 'length' | 'stray', number>
) {
  return Array.from({ length: Math.round(count) }, (_, i) => {
    const angle = (6.2832 * i) / count + chance(-0.2, 0.2)
    const lobes = 1 + 0.1 * Math.sin(angle * 3 + x) + 0.07 * Math.sin(angle * 5 + y)
    const start = r * lobes * Math.sqrt(chance(inner * inner, outer * outer))
    const lean = angle + chance(-stray, stray)
    const reach = r * chance(length * 0.55, length)
    return [
      [x + Math.cos(angle) * start, y + Math.sin(angle) * start],
      [Math.cos(lean) * reach, Math.sin(lean) * reach]
    ] as const satisfies readonly [Point, Point]
  })
}

/** A tuft of mold from above: never outlined, hair leaving it all round, a darker core, a pale rim. */
export const tuft =
  (at: Point, r: number, kind: Mold = MOLD.white): Layer =>
  chance => {
    const ring = (count: number, inner: number, outer: number, length: number, stray: number) =>
      strokes(outward(chance, at, r, { count: count * r, inner, outer, length, stray }))
    return (
      filled(closed(around(chance, at, r * 0.78, { rough: 0.12 })), kind.ground) +
      stroked(ring(2.4, 0.7, 0.85, 0.42, 0.6), EDGE, 1.3) +
      stroked(ring(4.6, 0.4, 0.86, 0.4, 0.7), kind.hair, 1.7) +
      stroked(ring(2.4, 0.06, kind.spread, 0.32, 1.4), kind.core, 1.7)
    )
  }

/** Where a growth stands on a level surface, how wide and how high it is. */
export interface Stand {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** The same mold from the side: it stands up off the surface. */
export const stand =
  ({ x, y, width, height }: Stand, kind: Mold = MOLD.white): Layer =>
  chance => {
    const row = (density: number, low: number, high: number, lean: number) =>
      strokes(
        Array.from({ length: Math.round(width * density) }, (_, i) => {
          const share = (2 * (i + 0.5)) / Math.round(width * density) - 1
          const rise = height * Math.sqrt(1.08 - share * share) * chance(low, high)
          const foot = x + (share * width) / 2
          const drift = share * width * 0.14 + chance(-lean, lean)
          return [
            [foot, y],
            [drift, -rise]
          ] as const satisfies readonly [Point, Point]
        })
      )
    return (
      stroked(row(0.9, 0.75, 1.1, 5), '#6E6149', 1.3) +
      stroked(row(1.3, 0.5, 1.05, 5), kind.hair, 1.7) +
      stroked(row(0.8, 0.2, 0.62, 4), kind.core, 1.7)
    )
  }

/** A dusting of dry powder: grains only, thick in the middle and thinning out. */
export const powder =
  (
    at: Point,
    r: number,
    { count = 90, tint = TINT.white as string, size = 2.4, squash = 1 } = {}
  ): Layer =>
  chance => {
    const grain = (reach: number): readonly [Point, Point] => {
      const angle = chance(0, 6.28)
      const far = r * chance() ** reach
      return [
        [at[0] + Math.cos(angle) * far, at[1] + Math.sin(angle) * far * squash],
        [0, 0]
      ]
    }
    const dust = (many: number, reach: number) =>
      strokes(Array.from({ length: Math.round(many) }, () => grain(reach)))
    return (
      stroked(dust(count * 0.3, 0.55), TINT.dust, size * 0.75) +
      stroked(dust(count, 0.8), tint, size) +
      stroked(dust(count * 0.2, 1), TINT.dust, size * 0.7)
    )
  }

/** A round raised dry colony: rings, a pale dry rim with hair, a core. */
export const colony =
  (at: Point, r: number, kind: Mold = MOLD.white): Layer =>
  chance => {
    const ring = (share: number, rough = 0.03) =>
      closed(around(chance, at, r * share, { rough, count: 13 }))
    const hair = (count: number, inner: number, outer: number, length: number) =>
      strokes(outward(chance, at, r, { count: count * r, inner, outer, length, stray: 0.35 }))
    return (
      stroked(hair(2.2, 0.84, 0.92, 0.3), EDGE, 1.3) +
      filled(ring(0.9), '#F5EFE0') +
      stroked(hair(3, 0.78, 0.94, 0.28), kind.hair, 1.6) +
      stroked(ring(0.66), '#B5A88C', 1.6) +
      filled(ring(0.42, 0.08), kind.core) +
      stroked(hair(1.4, 0.1, 0.5, 0.2), kind.ground, 1.4)
    )
  }
