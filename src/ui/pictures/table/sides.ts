import { MOLD } from '../hair.ts'
import { pad, stand } from '../hair-side.ts'
import { all, type Layer, shape, stroke } from '../layer.ts'
import type { Point } from '../line.ts'
import { band, gleam, near } from '../section.ts'
import { ridges } from '../skin.ts'
import { TINT } from '../tints.ts'
import { blots, strand } from '../under.ts'

const WALLS = [15, 145] as const
const film = (top: number, bottom: number, tint: string = TINT.cream) =>
  all(band(top, bottom, tint, [14, 146]), stroke(`M15 ${bottom}H145`, TINT.filmEdge, 2))
/** A wet lens lying in the surface: level above, swelling below, one light. */
const lens = (x: number, wide: number, deep: number) =>
  all(
    shape(
      `M${x - wide} 90q${wide * 0.4}-4 ${wide}-4t${wide} 4q${-wide * 0.4} ${deep} ${-wide} ${deep}t${-wide}${-deep}z`,
      TINT.cream
    ),
    stroke(
      `M${x - wide} 90q${wide * 0.4} ${deep} ${wide} ${deep}t${wide} ${-deep}`,
      TINT.filmEdge,
      2.2
    ),
    gleam(89, x - wide * 0.66, x + wide * 0.3, 5)
  )
const dome = (x: number, wide: number, high: number) =>
  all(
    shape(`M${x - wide} 90q0-${high} ${wide}-${high}t${wide} ${high}z`, '#E9D8B0'),
    stroke(`M${x - wide} 90q0-${high} ${wide}-${high}t${wide} ${high}`, TINT.teaDeep, 2.2),
    shape(
      `M${x - wide * 0.72} ${90 - high * 0.42}q${wide * 0.14}-${high * 0.4} ${wide * 0.7}-${high * 0.44}q-${wide * 0.42} ${high * 0.12}-${wide * 0.7} ${high * 0.44}z`,
      TINT.white
    )
  )
const flake = (x: number, y: number, tilt: number) =>
  stroke(`M${x} ${y}q4 ${-tilt} 8 0t7 ${tilt}`, TINT.skin, 3)

/** The same things from the side, with a light: what stands up and what lies flat. */
export const SIDES: Record<string, Layer> = {
  'side-hairs-or-powder': near(
    94,
    TINT.tea,
    film(88, 100),
    stand({ x: 56, y: 89, width: 64, height: 46 }),
    stand({ x: 112, y: 89, width: 48, height: 32 }, MOLD.green)
  ),
  'side-flat-ridges': near(
    92,
    TINT.tea,
    ridges(90, { from: WALLS[0], to: WALLS[1], height: 6, thick: 8 })
  ),
  'side-wet-and-flat': near(90, TINT.tea, film(88, 104), gleam(89, 24, 104, 7)),
  'side-wet-islands': near(90, TINT.tea, lens(46, 27, 15), lens(96, 18, 12), lens(130, 12, 9)),
  'side-dry-colonies': near(
    94,
    TINT.tea,
    film(88, 100),
    pad({ x: 52, y: 89, width: 66, height: 34 }),
    pad({ x: 114, y: 89, width: 46, height: 26 })
  ),
  'side-strands': near(
    88,
    TINT.tea,
    film(86, 98),
    gleam(87, 24, 84, 6),
    ...(
      [
        [34, 28, 136, 8],
        [40, 52, 122, 6],
        [78, 72, 150, 9],
        [82, 94, 130, 6],
        [118, 124, 142, 8],
        [114, 104, 118, 5]
      ] as const
    ).map(([x, end, low, width]) =>
      strand([x, 97] as Point, [end, low] as Point, { width, sway: 7 })
    )
  ),
  'side-blisters': near(
    94,
    TINT.tea,
    film(88, 100),
    dome(48, 25, 30),
    dome(98, 18, 20),
    dome(130, 10, 11),
    shape('M23 100q25 14 50 0zM80 100q18 10 36 0z', TINT.teaPale)
  ),
  'side-film-yeast': near(
    92,
    TINT.tea,
    ridges(90, { from: WALLS[0], to: WALLS[1], height: 4.5, thick: 4 }),
    flake(34, 108, 3),
    flake(72, 120, -3),
    flake(108, 106, 4),
    flake(52, 138, 3),
    flake(118, 134, -4)
  ),
  'side-pellicle': near(
    88,
    TINT.tea,
    film(84, 98),
    film(98, 112, TINT.film),
    film(112, 124, TINT.teaPale),
    blots([44, 130, 4, 104, 129, 5], TINT.strand),
    gleam(85, 24, 108, 7)
  )
}
