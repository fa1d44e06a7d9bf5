import { MOLD, stand } from '../hair.ts'
import { all, type Layer, shape, stroke } from '../layer.ts'
import { band, below, gleam, section } from '../section.ts'
import { ridges } from '../skin.ts'
import { TINT } from '../tints.ts'
import { strand } from '../under.ts'

const tea = (level: number) => below(level, TINT.tea)
const film = (top: number, bottom: number, tint: string = TINT.cream) =>
  all(band(top, bottom, tint), stroke(`M25 ${bottom}H135`, TINT.filmEdge, 2))
/** A wet lens lying in the surface: flat above, swelling below. */
const lens = (x: number, wide: number, deep = 9) =>
  all(
    shape(
      `M${x - wide} 84q${wide}-5 ${2 * wide} 0q${-wide} ${2 * deep} ${-2 * wide} 0z`,
      TINT.cream
    ),
    stroke(`M${x - wide} 84q${wide} ${2 * deep} ${2 * wide} 0`, TINT.filmEdge, 2),
    gleam(84.5, x - wide * 0.6, x + wide * 0.3, 3)
  )

/** The same things from the side, with a light: what stands up and what lies flat. */
export const SIDES: Record<string, Layer> = {
  'side-hairs-or-powder': section(
    tea(88),
    film(80, 92),
    stand({ x: 60, y: 81, width: 52, height: 34 }),
    stand({ x: 106, y: 81, width: 36, height: 24 }, MOLD.green)
  ),
  'side-flat-ridges': section(tea(88), ridges(86, { height: 8 })),
  'side-wet-and-flat': section(tea(84), film(82, 96), gleam(83, 32, 86, 5)),
  'side-wet-islands': section(tea(84), lens(48, 20), lens(88, 15), lens(119, 11, 6)),
  'side-dry-colonies': section(
    tea(86),
    film(82, 90),
    shape('M36 84q4-13 20-13t20 13zM92 84q3-10 15-10t15 10z', '#F5EFE0'),
    stroke('M36 84q4-13 20-13t20 13M92 84q3-10 15-10t15 10', '#B5A88C', 1.6),
    stand({ x: 56, y: 74, width: 34, height: 13 }),
    stand({ x: 107, y: 77, width: 26, height: 11 })
  ),
  'side-strands': section(
    tea(84),
    film(82, 91),
    gleam(83, 32, 76, 4),
    strand([46, 92], [40, 132], { width: 6 }),
    strand([50, 92], [58, 120], { width: 5 }),
    strand([84, 92], [80, 140], { width: 7, sway: 6 }),
    strand([112, 92], [118, 126], { width: 6 }),
    shape('M26 138Q50 132 80 137T134 138Q132 144 124 144.8H36Q28 144 26 138z', TINT.brown)
  ),
  'side-blisters': section(
    tea(84),
    film(82, 92),
    shape('M40 83q2-20 20-20t20 20zM88 83q1-12 13-12t13 12z', '#E6D3A6'),
    stroke('M40 83q2-20 20-20t20 20M88 83q1-12 13-12t13 12', TINT.teaDeep, 2),
    shape('M46 76q3-9 12-10q-7 4-9 11zM92 79q2-5 7-6q-4 3-5 7z', TINT.white),
    shape('M44 92q16 12 32 0zM91 92q10 8 20 0z', TINT.teaPale)
  ),
  'side-film-yeast': section(tea(88), ridges(87, { height: 5 })),
  'side-pellicle': section(
    tea(84),
    film(80, 90),
    film(90, 100, TINT.film),
    film(100, 108, TINT.teaPale),
    gleam(81.5, 32, 90, 5)
  )
}
