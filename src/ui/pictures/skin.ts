import type { Chance } from './chance.ts'
import { filled, type Layer, stroked } from './layer.ts'
import { open, type Point, taper } from './line.ts'
import { MOUTH } from './mouth.ts'
import { TINT } from './tints.ts'

/** The tints of a wrinkled skin: lit side, shaded side. */
export interface Skin {
  readonly lit: string
  readonly dark: string
}

const DRY: Skin = { lit: TINT.skinLit, dark: TINT.skinDark }

const inside = ([x, y]: Point) => Math.hypot(x - 80, y - 80) < MOUTH - 3

/** One fold of a sagging skin, bowed around the place it was pushed from. */
function fold(chance: Chance, reach: number, from: number, to: number, bow: Point): Point[] {
  const count = 7
  const phase = chance(0, 6.28)
  return Array.from({ length: count }, (_, i) => {
    const angle = ((from + ((to - from) * i) / (count - 1)) * Math.PI) / 180
    const far = reach + 2.2 * Math.sin(phase + i * 1.7) + chance(-0.8, 0.8)
    return [bow[0] + Math.cos(angle) * far, bow[1] + Math.sin(angle) * far] as const
  }).filter(inside)
}

/** Folds as on the skin of warm milk: a lit back, a shaded foot, lying closer where the skin was pushed. */
export const folds =
  ({
    bow = [150, 150] as Point,
    near = 34,
    far = 150,
    step = 11,
    skin = DRY,
    width = 6
  } = {}): Layer =>
  chance => {
    const lines: Point[][] = []
    let reach = near
    let gap = step * 0.72
    while (reach < far) {
      const pieces = chance() < 0.45 ? 1 : 2
      const middle = (Math.atan2(80 - bow[1], 80 - bow[0]) * 180) / Math.PI
      const spread = Math.min(80, (62 / reach) * 57.3 * 1.05)
      const cut = middle + chance(-spread * 0.3, spread * 0.3)
      const parts: readonly (readonly [number, number])[] =
        pieces === 1
          ? [[middle - spread * chance(0.7, 1), middle + spread * chance(0.7, 1)]]
          : [
              [middle - spread * chance(0.85, 1), cut + chance(0, 6)],
              [cut - chance(0, 6), middle + spread * chance(0.8, 1)]
            ]
      parts.forEach(([from, to], i) => {
        lines.push(fold(chance, reach + i * gap * 0.42, from, to, bow))
      })
      reach += gap
      gap = Math.min(step * 1.5, gap * 1.07)
    }
    const long = lines.filter(line => line.length > 3)
    const shifted = (by: number) =>
      long.map(line => line.map(([x, y]): Point => [x + by, y + by * 1.1]))
    return (
      filled(
        shifted(1.5)
          .map(line => taper(line, width))
          .join(''),
        skin.dark
      ) +
      filled(
        shifted(-0.6)
          .map(line => taper(line, width * 0.8))
          .join(''),
        skin.lit
      )
    )
  }

/** The folds of a skin from the side: low, rounded, nothing standing up. */
export const ridges =
  (y: number, { from = 25, to = 135, height = 6, tint = TINT.skin as string } = {}): Layer =>
  chance => {
    const points: Point[] = [[from, y]]
    for (let x = from; x < to; ) {
      const wide = Math.min(to - x, chance(11, 19))
      const high = height * chance(0.6, 1.1)
      points.push(
        [x + wide * 0.25, y - high * 1.5],
        [x + wide * 0.75, y - high * 1.5],
        [x + wide, y]
      )
      x += wide
    }
    points.push([to, y])
    const line = open(points)
    return filled(`${line}V${y + 5}H${from}z`, tint) + stroked(line, TINT.skinDark, 1.8)
  }
