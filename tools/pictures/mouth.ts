import { all, filled, inked, type Layer, round, stroked } from './layer.ts'
import { around, closed, type Point } from './line.ts'
import { TINT } from './tints.ts'

const CENTER: Point = [80, 80]
/** How far the inside of a jar's mouth reaches from its middle. */
export const MOUTH = 66.5

/** A jar as you see it when you lean over it: its mouth, and what fills it. */
export const mouth =
  (tint: string, ...layers: readonly Layer[]): Layer =>
  chance =>
    filled(round(CENTER, MOUTH), tint) +
    all(...layers)(chance) +
    inked(`${round(CENTER, MOUTH)}${round(CENTER, 75.5)}`)

/** Draws points that lie outside the mouth back to its wall. */
export function within(points: readonly Point[], limit = MOUTH - 0.5): Point[] {
  return points.map(([x, y]) => {
    const reach = Math.hypot(x - 80, y - 80)
    const share = reach > limit ? limit / reach : 1
    return [80 + (x - 80) * share, 80 + (y - 80) * share] as const
  })
}

/** A film that covers the mouth but for a bay or two where it hangs back from the glass. */
export const cover =
  (tint: string, { edge = TINT.filmEdge as string, bays = [100, 250], depth = 8 } = {}): Layer =>
  chance => {
    const rim = around(chance, CENTER, 68, { rough: 0.012, count: 28 }).map((point, i, ring) => {
      const angle = (Math.atan2(point[1] - 80, point[0] - 80) * 180) / Math.PI
      const near = bays.some(bay => Math.abs(((angle - bay + 540) % 360) - 180) < 22)
      const share = near ? 1 - depth / 66 - (i % 2) * 0.03 : 1
      return ring.length === 0
        ? point
        : ([80 + (point[0] - 80) * share, 80 + (point[1] - 80) * share] as const)
    })
    const line = closed(within(rim))
    return filled(line, tint) + stroked(line, edge)
  }
