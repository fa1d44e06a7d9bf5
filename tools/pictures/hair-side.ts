import type { Chance } from './chance.ts'
import { MOLD, type Mold } from './hair.ts'
import { filled, type Layer, stroked, strokes } from './layer.ts'
import { arc, open, type Point } from './line.ts'

/** Where a growth stands on a level surface, how wide and how high it is. */
export interface Stand {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** Hairs leaving a mound upward and sideways, from a share of its height on. */
function rising(
  chance: Chance,
  { x, y, width, height }: Stand,
  [density, inner, outer, length, lean]: readonly [number, number, number, number, number],
  bow = 0
): string {
  return strokes(
    Array.from({ length: Math.round(width * density) }, () => {
      const angle = chance(3.2, 6.22)
      const far = Math.sqrt(chance(inner * inner, outer * outer))
      const [c, s] = [Math.cos(angle), Math.sin(angle)]
      const way = Math.atan2(s * 1.4 - 0.35, c) + chance(-lean, lean)
      const reach = chance(length * 0.5, length)
      return [
        [x + c * far * width * 0.43, y + s * far * height * 0.72],
        [Math.cos(way) * reach, Math.min(0, Math.sin(way) * reach)]
      ] as const satisfies readonly [Point, Point]
    }),
    bow
  )
}

const mound = (chance: Chance, { x, y, width, height }: Stand, share: number) =>
  `${open(
    arc([0, 0], 1, 180, 360, 9).map(
      ([mx, my]): Point => [x + mx * width * 0.42, y + my * height * share * chance(0.94, 1.06)]
    )
  )}z`

/** Mold from the side: a cushion of long hair that stands up off the surface. */
export const stand =
  (spot: Stand, kind: Mold = MOLD.white): Layer =>
  chance => {
    const { height } = spot
    return (
      filled(mound(chance, spot, 0.66), kind.ground) +
      stroked(rising(chance, spot, [1.4, 0.8, 1, height * 0.42, 0.5]), '#4F4535', 0.7) +
      stroked(rising(chance, spot, [3.2, 0.6, 1, height * 0.48, 0.6], 0.24), kind.hair, 0.9) +
      stroked(rising(chance, spot, [1.6, 0.2, 0.7, height * 0.3, 1.2]), kind.hair, 0.8) +
      stroked(rising(chance, spot, [2.4, 0, kind.spread, height * 0.3, 1.2]), kind.core, 0.9)
    )
  }

/** A round dry colony from the side: a raised pad with short hair and a darker crown. */
export const pad =
  (spot: Stand, kind: Mold = MOLD.white): Layer =>
  chance => {
    const crown = {
      x: spot.x,
      y: spot.y - spot.height * 0.5,
      width: spot.width * 0.46,
      height: spot.height * 0.4
    }
    return (
      filled(mound(chance, spot, 0.84), '#E9DFC9') +
      stroked(rising(chance, spot, [1.4, 1.02, 1.16, 6, 0.5]), '#4F4535', 0.7) +
      stroked(rising(chance, crown, [3.4, 0.1, 1.1, 5, 1]), '#5B503D', 0.9) +
      stroked(rising(chance, spot, [3.8, 0.95, 1.16, 7, 0.7]), kind.hair, 0.9) +
      stroked(rising(chance, spot, [1, 0.3, 0.85, 4, 1.4]), '#B5A684', 0.8)
    )
  }
