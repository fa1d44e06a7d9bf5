import { MOLD } from '../hair.ts'
import { pad, stand } from '../hair-side.ts'
import { all, type Layer, shape, stroke } from '../layer.ts'
import { spotsOf } from '../line.ts'
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
const HAIRS = [
  stand({ x: 56, y: 89, width: 64, height: 46 }),
  stand({ x: 112, y: 89, width: 48, height: 32 }, MOLD.green)
]
const filmYeast = ridges(90, { from: WALLS[0], to: WALLS[1], height: 4.5, thick: 4 })
const dome = (x: number, wide: number, high: number) =>
  all(
    shape(`M${x - wide} 90q0-${high} ${wide}-${high}t${wide} ${high}z`, '#E9D8B0'),
    stroke(`M${x - wide} 90q0-${high} ${wide}-${high}t${wide} ${high}`, TINT.teaDeep, 2.2),
    shape(
      `M${x - wide * 0.72} ${90 - high * 0.42}q${wide * 0.14}-${high * 0.4} ${wide * 0.7}-${high * 0.44}q-${wide * 0.42} ${high * 0.12}-${wide * 0.7} ${high * 0.44}z`,
      TINT.white
    )
  )
/** A flake broken off a film, sinking. */
const flake = (x: number, y: number, tilt: number) =>
  shape(`M${x} ${y}l6 ${-tilt} 7 1 3 ${tilt - 1} -8 3z`, TINT.skin)

/** The same things from the side, with a light: what stands up and what lies flat. */
export const SIDES: Record<string, Layer> = {
  'side-hairs-or-powder': near(94, TINT.tea, film(88, 100), ...HAIRS),
  'side-brine-fuzz': near(89, TINT.brine, ...HAIRS),
  'side-early-mold': near(
    94,
    TINT.tea,
    film(88, 100),
    stand({ x: 50, y: 89, width: 26, height: 18 }),
    stand({ x: 92, y: 89, width: 34, height: 24 }),
    stand({ x: 126, y: 89, width: 15, height: 11 })
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
    ...spotsOf([34, 36, 132, 58, 64, 118, 84, 80, 148, 108, 112, 124, 126, 120, 140]).map(
      ([x, end, low]) => strand([x, 97], [end, low], { threads: 5, sway: 5, fray: 13 })
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
    filmYeast,
    flake(34, 108, 3),
    flake(72, 120, 4),
    flake(108, 106, 4),
    flake(52, 138, 3),
    flake(118, 134, 2)
  ),
  'side-brine-film': near(92, TINT.brine, filmYeast),
  'side-brine-wet': near(90, TINT.brine, gleam(91, 24, 104, 7)),
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
