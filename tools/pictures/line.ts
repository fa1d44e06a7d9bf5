import type { Chance } from './chance.ts'

/** A place in the 160 by 160 square that every picture fills. */
export type Point = readonly [x: number, y: number]

const number = (value: number) =>
  String(Math.round(value * 10) / 10)
    .replace(/^0\./, '.')
    .replace(/^-0\./, '-.')
    .replace(/^-0$/, '0')

/** Numbers as a path writes them: a minus sign parts two numbers as well as a space does. */
export const numbers = (...values: number[]) =>
  values.map(number).reduce((text, next) => text + (next.startsWith('-') ? next : ` ${next}`))

// Controls on fifths, so that the middle of two of them is a whole tenth and T continues exactly.
const fifth = (value: number) => Math.round(value * 5) / 5
const settle = (points: readonly Point[]): Point[] => points.map(([x, y]) => [fifth(x), fifth(y)])
const middle = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]
const bends = (stops: readonly Point[]) =>
  stops.map(([x, y], i) => (i === 1 ? `T${numbers(x, y)}` : numbers(x, y))).join(' ')

function along(points: readonly Point[]): string {
  const [first, second, ...rest] = points
  if (first === undefined || second === undefined) return ''
  if (rest.length === 0) return `L${numbers(...second)}`
  const turns = points.slice(1, -1)
  const stops = turns.map((turn, i) =>
    i === turns.length - 1 ? (points.at(-1) ?? turn) : middle(turn, turns[i + 1] ?? turn)
  )
  return `Q${numbers(...second)} ${bends(stops)}`
}

/** A smooth line from the first point to the last. */
export function open(points: readonly Point[]): string {
  const settled = settle(points)
  return settled[0] === undefined ? '' : `M${numbers(...settled[0])}${along(settled)}`
}

/** A smooth closed line around the points. */
export function closed(points: readonly Point[]): string {
  const settled = settle(points)
  const [first, second] = settled
  if (first === undefined || second === undefined) return ''
  const start = middle(first, second)
  const turns = [...settled.slice(1), first]
  const stops = turns.map((turn, i) => middle(turn, turns[i + 1] ?? second))
  return `M${numbers(...start)}Q${numbers(...second)} ${bends(stops)}z`
}

/** A line that swells to `width` in its middle and ends in points: a highlight, a strand, a fold. */
export function taper(points: readonly Point[], width: number): string {
  const last = points.length - 1
  const side = (sign: number) =>
    points.map(([x, y], i): Point => {
      const [ax, ay] = points[Math.max(0, i - 1)] ?? [x, y]
      const [bx, by] = points[Math.min(last, i + 1)] ?? [x, y]
      const length = Math.hypot(bx - ax, by - ay) || 1
      const half = (sign * width * Math.max(0, Math.sin((Math.PI * i) / last)) ** 0.75) / 2
      return [x - ((by - ay) / length) * half, y + ((bx - ax) / length) * half]
    })
  const back = settle(side(-1).reverse())
  return `${open(side(1))}${along(back)}z`
}

/** Places with a size each, as one list: x, y, size, x, y, size … */
export type Spots = readonly number[]

/** The spots of a list, three numbers each. */
export function spotsOf(list: Spots): (readonly [x: number, y: number, size: number])[] {
  return Array.from({ length: Math.floor(list.length / 3) }, (_, i) => {
    const [x = 0, y = 0, size = 0] = list.slice(i * 3, i * 3 + 3)
    return [x, y, size] as const
  })
}

/** The points of a list, two numbers each. */
export function pairsOf(list: readonly number[]): Point[] {
  return Array.from({ length: Math.floor(list.length / 2) }, (_, i) => {
    const [x = 0, y = 0] = list.slice(i * 2, i * 2 + 2)
    return [x, y] as const
  })
}

/** Points around a center, uneven as things that grow are. */
export function around(
  chance: Chance,
  [x, y]: Point,
  radius: number,
  { rough = 0.08, squash = 1, count = 11 } = {}
): Point[] {
  const start = chance(0, 6.28)
  return Array.from({ length: count }, (_, i) => {
    const angle = start + (6.2832 * i) / count
    const reach = radius * (1.04 + chance(-rough, rough))
    return [x + Math.cos(angle) * reach, y + Math.sin(angle) * reach * squash] as const
  })
}

/** Points on an arc, angles in degrees, clockwise from three o'clock. */
export function arc([x, y]: Point, radius: number, from: number, to: number, count = 5): Point[] {
  return Array.from({ length: count }, (_, i) => {
    const angle = ((from + ((to - from) * i) / (count - 1)) * Math.PI) / 180
    return [x + Math.cos(angle) * radius, y + Math.sin(angle) * radius] as const
  })
}
