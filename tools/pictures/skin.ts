import type { Chance } from './chance.ts'
import { filled, type Layer, stroked } from './layer.ts'
import { arc, numbers, open, type Point, taper } from './line.ts'
import { MOUTH } from './mouth.ts'
import { TINT } from './tints.ts'

/** The tints of a wrinkled skin: lit side, shaded side. */
export interface Skin {
  readonly lit: string
  readonly dark: string
}

const DRY: Skin = { lit: TINT.skinLit, dark: TINT.skinDark }

/** How a skin is wrinkled: which way its folds run, how far apart they lie, how high they stand. */
export interface Wrinkles {
  readonly turn?: number
  readonly gap?: number
  readonly width?: number
  readonly reach?: number
  readonly skin?: Skin
}

/** The lines of the folds: long, bowed, every second one leaving its neighbor as pleats do. */
function pleats(chance: Chance, turn: number, gap: number, reach: number): Point[][] {
  const [c, s] = [Math.cos(turn), Math.sin(turn)]
  const place = (u: number, v: number): Point => [80 + u * c - v * s, 80 + u * s + v * c]
  const bow = chance(0.0025, 0.0045)
  const lines: Point[][] = []
  for (let v = -reach; v < reach; v += gap * 2) {
    const [phase, beat] = [chance(0, 6.28), chance(14, 19)]
    const along = (u: number) =>
      v + bow * u * u - 8 + 3.6 * Math.sin(u / beat + phase) + 1.3 * Math.sin(u / 6.5 + 2 * phase)
    const leave = chance(-46, 8)
    const side = chance() < 0.5 ? 1 : -1
    const apart = (u: number) => {
      const share = Math.min(1, Math.max(0, (u * side - leave) / 44))
      return share * share * (3 - 2 * share) * gap
    }
    const run = (line: (u: number) => number, from: number, to: number) =>
      Array.from({ length: 14 }, (_, i) => {
        const u = from + ((to - from) * i) / 13
        return place(u, line(u))
      }).filter(([x, y]) => Math.hypot(x - 80, y - 80) < reach)
    lines.push(run(along, -reach * chance(0.8, 1.05), reach * chance(0.8, 1.05)))
    lines.push(
      side > 0
        ? run(u => along(u) + apart(u), leave + 6, reach * chance(0.75, 1))
        : run(u => along(u) + apart(u), -reach * chance(0.75, 1), -leave - 6)
    )
  }
  return lines.filter(line => line.length > 5)
}

/** Folds as on the skin of warm milk: a soft lit back and a shaded foot. */
export const folds =
  ({ turn = -0.7, gap = 11, width = 7, reach = 62, skin = DRY }: Wrinkles = {}): Layer =>
  chance => {
    const lines = pleats(chance, turn, gap, reach)
    const [dx, dy] = [-Math.sin(turn), Math.cos(turn)]
    const moved = (by: number, wide: number) =>
      lines
        .map(line =>
          taper(
            line.map(([x, y]): Point => [x + dx * by, y + dy * by]),
            wide
          )
        )
        .join('')
    return filled(moved(width * 0.3, width * 0.9), skin.dark) + filled(moved(-0.6, width), skin.lit)
  }

/** A place where a skin has torn back from the glass and the liquid shows. */
export const tear =
  (
    tint: string,
    angle: number,
    { spread = 34, depth = 22, edge = TINT.skinDark as string } = {}
  ): Layer =>
  chance => {
    const rim = arc([80, 80], MOUTH, angle - spread, angle + spread, 9)
    const ragged = arc([80, 80], MOUTH, angle + spread, angle - spread, 13).map(
      ([x, y], i): Point => {
        const share = 1 - (depth / MOUTH) * Math.sin((Math.PI * i) / 12) * chance(0.72, 1.1)
        return [80 + (x - 80) * share, 80 + (y - 80) * share]
      }
    )
    return (
      filled(`${open(rim)}${open(ragged).replace('M', 'L')}z`, tint) +
      stroked(open(ragged), edge, 2)
    )
  }

/** The folds of a skin from the side: low and rounded, nothing standing up. */
export const ridges =
  (
    y: number,
    { from = 25, to = 135, height = 6, tint = TINT.skin as string, thick = 6 } = {}
  ): Layer =>
  chance => {
    let line = `M${numbers(from, y)}`
    for (let x = from; x < to; ) {
      const wide = Math.min(to - x, chance(9, 25))
      const rest = to - x - wide < 8 ? to - x : wide
      const flat = Math.min(3, rest / 4)
      line += `h${numbers(flat)}q${numbers((rest - flat) / 2, -2 * height * chance(0.6, 1.15), rest - flat, 0)}`
      x += rest
    }
    return filled(`${line}V${y + thick}H${from}z`, tint) + stroked(line, TINT.skinDark, 1.8)
  }
