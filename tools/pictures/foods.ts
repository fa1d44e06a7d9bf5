import { filled, type Layer, round, stroked } from './layer.ts'
import { around, closed, numbers, open, type Point, type Spots, spotsOf } from './line.ts'
import { TINT } from './tints.ts'

/** Cut cabbage lying every way in a box, or in a round. */
export const shreds =
  (
    [left, top, right, bottom]: readonly [number, number, number, number],
    count: number,
    { tint = TINT.leaf as string, dark = TINT.leafDark as string, width = 4, long = 20 } = {}
  ): Layer =>
  chance => {
    const one = (): string => {
      const half = long / 2
      const x = chance(left + half, right - half)
      const y = chance(top + 4, bottom - 4)
      const turn = chance(-0.7, 0.7)
      const bow = chance(-7, 7)
      const [c, s] = [Math.cos(turn) * half, Math.sin(turn) * half]
      const low = (value: number) => Math.min(bottom - 2, Math.max(top + 2, value))
      return open([
        [x - c, low(y - s)],
        [x, low(y + bow)],
        [x + c, low(y + s)]
      ])
    }
    const lines = (many: number) => Array.from({ length: many }, one).join('')
    return stroked(lines(Math.round(count * 0.6)), dark, width) + stroked(lines(count), tint, width)
  }

/** The same shreds inside a jar's mouth. */
export const shredsRound =
  (
    count: number,
    { tint = TINT.leaf as string, dark = TINT.leafDark as string, width = 4 } = {}
  ): Layer =>
  chance => {
    const one = () => {
      const angle = chance(0, 6.28)
      const far = 52 * Math.sqrt(chance())
      const [x, y] = [80 + Math.cos(angle) * far, 80 + Math.sin(angle) * far]
      const turn = chance(0, 6.28)
      const bow = chance(-6, 6)
      return open([
        [x - Math.cos(turn) * 10, y - Math.sin(turn) * 10],
        [x + Math.sin(turn) * bow, y - Math.cos(turn) * bow],
        [x + Math.cos(turn) * 10, y + Math.sin(turn) * 10]
      ])
    }
    const lines = (many: number) => Array.from({ length: many }, one).join('')
    return stroked(lines(Math.round(count * 0.6)), dark, width) + stroked(lines(count), tint, width)
  }

/** A slice of cucumber: skin, flesh, seeds. */
export const slice =
  ([x, y]: Point, r: number): Layer =>
  () =>
    `<path fill="${TINT.cucumberPale}" stroke="${TINT.cucumber}" stroke-width="3" d="${round([x, y], r)}"/>` +
    stroked(
      [0, 1, 2, 3, 4, 5]
        .map(i => {
          const [c, s] = [Math.cos(i * 1.047), Math.sin(i * 1.047)]
          return `M${numbers(x + c * r * 0.3, y + s * r * 0.3)}l${numbers(c * r * 0.25, s * r * 0.25)}`
        })
        .join(''),
      TINT.leafDark,
      1.8
    )

/** A whole cucumber, standing or lying. */
export const cucumber =
  (from: Point, to: Point, width: number, tint: string = TINT.cucumber): Layer =>
  () => {
    const line = `M${numbers(...from)}L${numbers(...to)}`
    return stroked(line, '#4E5C28', width + 4) + stroked(line, tint, width)
  }

/** Kefir grains: knobbed like cauliflower, each knob with its light. */
export const grains =
  (list: Spots, edge: string = TINT.milkDark): Layer =>
  chance =>
    spotsOf(list)
      .map(([x, y, r]) => {
        const knobs = around(chance, [x, y], r * 0.6, { rough: 0.2, count: 6 })
        const heads = [...knobs, [x, y] as Point].map(spot => round(spot, r * 0.46)).join('')
        const dents = knobs
          .slice(0, 4)
          .map(
            ([kx, ky]) =>
              `M${numbers(kx - r * 0.1, ky + r * 0.2)}q${numbers(r * 0.2, r * 0.15, r * 0.3, -r * 0.1)}`
          )
          .join('')
        return stroked(heads, edge, 3.4) + filled(heads, TINT.grain) + stroked(dents, edge, 1.5)
      })
      .join('')

/** A berry or a cut piece of fruit. */
export const berry =
  ([x, y]: Point, r: number, tint: string = TINT.berry): Layer =>
  chance =>
    filled(closed(around(chance, [x, y], r, { rough: 0.06 })), tint)

/** Clear crystals as of water kefir: angular, one light edge each. */
export const crystals =
  (list: Spots): Layer =>
  chance =>
    spotsOf(list)
      .map(([x, y, r]) => {
        const corners = around(chance, [x, y], r, { rough: 0.2, count: 6 })
        const line = `M${corners.map(([px, py]) => numbers(px, py)).join('L')}z`
        return (
          `<path fill="#F6EFDC" stroke="${TINT.crystal}" stroke-width="1.8" d="${line}"/>`.replace(
            '1.8',
            '1.8'
          ) +
          stroked(
            `M${numbers(x - r * 0.4, y - r * 0.1)}L${numbers(x, y - r * 0.45)}`,
            TINT.white,
            2
          )
        )
      })
      .join('')
