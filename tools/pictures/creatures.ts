import { filled, type Layer, stroked } from './layer.ts'
import { numbers, open, type Point, type Spots, spotsOf } from './line.ts'
import { TINT } from './tints.ts'

/** A maggot: a pale ringed body with a dark point for a head. */
export const maggot =
  ([x, y]: Point, turn = 0, size = 1): Layer =>
  chance => {
    const bend = chance(-0.5, 0.5)
    const line = Array.from({ length: 5 }, (_, i): Point => {
      const angle = turn + bend * (i - 2) * 0.5
      const step = (i - 2) * 6 * size
      return [x + Math.cos(angle) * step, y + Math.sin(angle) * step + Math.abs(i - 2) * bend * 2]
    })
    const head = line[4] ?? [x, y]
    const rings = line
      .slice(1, 4)
      .map(([cx, cy]) => {
        const [dx, dy] = [-Math.sin(turn) * 2.6 * size, Math.cos(turn) * 2.6 * size]
        return `M${numbers(cx - dx, cy - dy)}l${numbers(2 * dx, 2 * dy)}`
      })
      .join('')
    return (
      stroked(open(line), '#5F4A2C', 9.5 * size) +
      stroked(open(line), '#FFF6DF', 6.6 * size) +
      stroked(rings, '#A98F68', 1.3) +
      stroked(`M${numbers(head[0], head[1])}h.1`, TINT.black, 3.4 * size)
    )
  }

/** Vinegar eels: threads much thinner than any strand, each with its own wriggle. */
export const eels =
  (list: Spots, tint: string, long = 13): Layer =>
  () =>
    stroked(
      spotsOf(list)
        .map(([x, y, turn]) => {
          const [c, s] = [Math.cos(turn), Math.sin(turn)]
          const pointAt = (along: number, across: number): Point => [
            x + c * along - s * across,
            y + s * along + c * across
          ]
          const q = long / 4
          return open([
            pointAt(-2 * q, 0),
            pointAt(-1.2 * q, 3.4),
            pointAt(0, -3.6),
            pointAt(1.2 * q, 3.4),
            pointAt(2 * q, 0)
          ])
        })
        .join(''),
      tint,
      1.5
    )

/** A fruit fly from above: body, two clear wings, red eyes. */
export const fly =
  ([x, y]: Point, size = 1, turn = 0): Layer =>
  () => {
    const pointAt = (dx: number, dy: number): [number, number] => [
      x + (Math.cos(turn) * dx - Math.sin(turn) * dy) * size,
      y + (Math.sin(turn) * dx + Math.cos(turn) * dy) * size
    ]
    const wing = (side: number) =>
      `M${numbers(...pointAt(0, -2))}Q${numbers(...pointAt(side * 13, 2), ...pointAt(side * 8, 13))}Q${numbers(...pointAt(side * 2, 10), ...pointAt(0, -2))}z`
    return (
      stroked(`M${numbers(...pointAt(0, -4))}L${numbers(...pointAt(0, 7))}`, '#4A2E14', 6 * size) +
      `<path fill="#F6EEDD" stroke="#4A2E14" stroke-width="1.4" d="${wing(1)}${wing(-1)}"/>` +
      stroked(
        `M${numbers(...pointAt(-2.6, -7))}h.1M${numbers(...pointAt(2.6, -7))}h.1`,
        TINT.red,
        4 * size
      ) +
      stroked(
        `M${numbers(...pointAt(-3, -3))}L${numbers(...pointAt(-9, -6))}M${numbers(...pointAt(3, -3))}L${numbers(...pointAt(9, -6))}`,
        '#4A2E14',
        1.3
      )
    )
  }

/** A small beetle from above, six legs. */
export const beetle =
  ([x, y]: Point): Layer =>
  () => {
    const legs = [-5, 0, 5]
      .flatMap(dx => [-5, 5].map(dy => `M${x + dx} ${y + dy}l${numbers(dx * 0.6, dy * 0.8)}`))
      .join('')
    return (
      filled(`M${x - 7} ${y}q0-5 7-5t8 5-8 5-7-5z`, '#5A3415') +
      stroked(`${legs}M${x + 8} ${y}h3`, '#5A3415', 1.8)
    )
  }

/** A drop, for a leak. */
export const drop =
  ([x, y]: Point, size: number, tint: string): Layer =>
  () =>
    filled(
      `M${numbers(x, y)}q${numbers(size, size * 1.4)} ${numbers(0, size * 2)}t${numbers(0, -size * 2)}z`,
      tint
    ) +
    filled(
      `M${numbers(x, y)}c${numbers(size * 0.3, size * 0.9, size, size * 1.2, size, size * 1.9)}a${numbers(size, size)} 0 0 1 ${numbers(-2 * size, 0)}c${numbers(0, -size * 0.7, size * 0.7, -size, size, -size * 1.9)}z`,
      tint
    )
