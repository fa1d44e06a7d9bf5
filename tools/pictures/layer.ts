import type { Chance } from './chance.ts'
import { numbers, type Point } from './line.ts'

/** One thing in a picture, drawn over what came before. */
export type Layer = (chance: Chance) => string

/** Several things as one. */
export const all =
  (...layers: readonly Layer[]): Layer =>
  chance =>
    layers.map(layer => layer(chance)).join('')

/** A flat shape. */
export const filled = (shape: string, tint: string) => `<path fill="${tint}" d="${shape}"/>`

/** A line in a color of the drawing's own. */
export const stroked = (shape: string, tint: string, width = 2) =>
  `<path stroke="${tint}" stroke-width="${width}" d="${shape}"/>`

/** A line in the ink of the page it stands on. */
export const inked = (shape: string) => `<path stroke="currentColor" d="${shape}"/>`

/** A fixed shape as a layer. */
export const shape =
  (line: string, tint: string): Layer =>
  () =>
    filled(line, tint)

/** A fixed line as a layer. */
export const stroke =
  (line: string, tint: string, width = 2): Layer =>
  () =>
    stroked(line, tint, width)

/** A fixed line in the page's ink as a layer. */
export const ink =
  (line: string): Layer =>
  () =>
    inked(line)

/** A circle as part of a path. */
export const round = ([x, y]: Point, r: number) =>
  `M${numbers(x - r, y)}a${numbers(r, r)} 0 1 0 ${numbers(2 * r)} 0a${numbers(r, r)} 0 1 0 ${numbers(-2 * r)} 0z`

/** A straight stroke: where it begins, and its step from there. */
export type Step = readonly [at: Point, by: Point]

// Each stroke after the one that begins nearest: short moves are short numbers.
function nearestFirst(steps: readonly Step[]): Step[] {
  const left = [...steps]
  const order: Step[] = []
  let pen: Point = [80, 80]
  while (left.length > 0) {
    let best = 0
    let least = Number.POSITIVE_INFINITY
    for (const [i, [index]] of left.entries()) {
      const far = Math.abs(index[0] - pen[0]) + Math.abs(index[1] - pen[1])
      if (far < least) [best, least] = [i, far]
    }
    for (const step of left.splice(best, 1)) {
      order.push(step)
      pen = [step[0][0] + step[1][0], step[0][1] + step[1][1]]
    }
  }
  return order
}

const whole = ([x, y]: Point): Point => [Math.round(x), Math.round(y)]

/** Many strokes as one line, on whole numbers to stay short; `bow` curls each a little its own way. */
export function strokes(steps: readonly Step[], bow = 0): string {
  let pen: Point = [0, 0]
  return nearestFirst(steps)
    .map(([spot, by], i) => {
      const [x, y] = whole(spot)
      const [dx, dy] = whole(by)
      const move = i === 0 ? `M${numbers(x, y)}` : `m${numbers(x - pen[0], y - pen[1])}`
      pen = [x + dx, y + dy]
      const curl = i % 2 === 0 ? bow : -bow
      const [cx, cy] = whole([dx * 0.5 - dy * curl, dy * 0.5 + dx * curl])
      return bow === 0
        ? `${move}${dx === 0 && dy === 0 ? 'h0' : `l${numbers(dx, dy)}`}`
        : `${move}q${numbers(cx, cy)}${dx < 0 ? '' : ' '}${numbers(dx, dy)}`
    })
    .join('')
}
