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

/** Many straight strokes as one line, each from a place by a step, on whole numbers to stay short. */
export function strokes(steps: readonly (readonly [at: Point, by: Point])[]): string {
  let [penX, penY] = [0, 0]
  return steps
    .map(([at, by], i) => {
      const [x, y] = at.map(Math.round) as unknown as Point
      const dx = Math.round(by[0])
      const dy = Math.round(by[1])
      const move = i === 0 ? `M${numbers(x, y)}` : `m${numbers(x - penX, y - penY)}`
      penX = x + dx
      penY = y + dy
      return `${move}l${numbers(dx, dy)}`
    })
    .join('')
}
