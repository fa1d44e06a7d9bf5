import { filled, type Layer, stroked, strokes } from './layer.ts'
import { around, closed, open, type Point, type Spots, spotsOf, taper } from './line.ts'
import { TINT } from './tints.ts'

/** A yeast strand: a bundle of soft brown threads that fray toward their end. */
export const strand =
  (
    from: Point,
    to: Point,
    { threads = 4, sway = 5, fray = 9, tint = TINT.strand as string } = {}
  ): Layer =>
  chance => {
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1
    const [ax, ay] = [-(to[1] - from[1]) / long, (to[0] - from[0]) / long]
    const phase = chance(0, 6.28)
    const lines = Array.from({ length: threads }, (_, k) => {
      const reach = k === 0 ? 1 : chance(0.55, 1)
      const apart = k === 0 ? 0 : chance(-fray, fray)
      return Array.from({ length: 6 }, (_, i): Point => {
        const share = (i / 5) * reach
        const off =
          Math.sin(phase + share * 8) * sway * Math.min(1, share * 3) +
          apart * share ** 1.5 +
          (i === 0 ? 0 : chance(-1.6, 1.6))
        return [
          from[0] + (to[0] - from[0]) * share + ax * off,
          from[1] + (to[1] - from[1]) * share + ay * off
        ]
      })
    })
    const main = lines[0] ?? []
    return filled(taper(main, 4.5), tint) + stroked(lines.map(open).join(''), tint, 1.5)
  }

/** A clot where strands meet. */
export const clot =
  (spot: Point, r: number, tint: string = TINT.strand): Layer =>
  chance =>
    filled(closed(around(chance, spot, r, { rough: 0.25, count: 9 })), tint)

/** Smooth blots with soft edges, as of something seen through a film. */
export const blots =
  (list: Spots, tint: string, rough = 0.16): Layer =>
  chance =>
    filled(
      spotsOf(list)
        .map(([x, y, r]) => closed(around(chance, [x, y], r, { rough, count: 10 })))
        .join(''),
      tint
    )

/** Hard dark flecks with corners: tea dust, seeds, bran. */
export const flecks =
  (
    count: number,
    tint: string,
    { at = [80, 80] as Point, r = 54, size = 3, squash = 1 } = {}
  ): Layer =>
  chance =>
    filled(
      Array.from({ length: count }, () => {
        const angle = chance(0, 6.28)
        const far = r * Math.sqrt(chance())
        const corner = () => Math.round(chance(-size, size))
        const [a, b] = [size * chance(0.6, 1.2), chance(0.4, 1) * size]
        const x = Math.round(at[0] + Math.cos(angle) * far)
        const y = Math.round(at[1] + Math.sin(angle) * far * squash)
        return `M${x} ${y}l${Math.round(a)} ${corner()} ${corner()} ${Math.round(b)}z`
      }).join(''),
      tint
    )

/** Upright lines across a color that must be told without color: red and pink, as engravers set them. */
const uprights =
  (columns: readonly (readonly [x: number, top: number, bottom: number])[], tint: string): Layer =>
  () =>
    stroked(
      strokes(
        columns.map(([x, top, bottom]) => [
          [x, top],
          [0, bottom - top]
        ])
      ),
      tint,
      1.3
    )

/** Such lines filling a round spot. */
export const uprightsIn = ([x, y]: Point, r: number, tint: string, step = 4): Layer => {
  const half = Math.floor((r * 0.86) / step)
  return uprights(
    Array.from({ length: 2 * half + 1 }, (_, i) => {
      const off = (i - half) * step
      const tall = Math.sqrt(r * r * 0.74 - off * off)
      return [x + off, y - tall, y + tall] as const
    }),
    tint
  )
}

/** Such lines filling a box. */
export const uprightsBox = (
  x: number,
  y: number,
  right: number,
  bottom: number,
  tint: string,
  step = 5
) =>
  uprights(
    Array.from({ length: Math.floor((right - x) / step) - 1 }, (_, i) => {
      const off = x + (i + 1) * step
      return [off, y + 2, bottom - 2] as const
    }),
    tint
  )
