import { beetle, fly, maggot } from '../creatures.ts'
import { MOLD, tuft } from '../hair.ts'
import { rubberBand } from '../jars.ts'
import { all, type Layer, shape, stroke } from '../layer.ts'
import { type Point, taper } from '../line.ts'
import { mouth } from '../mouth.ts'
import { band, below, gleam, section } from '../section.ts'
import { TINT } from '../tints.ts'
import { blots, flecks, uprightsBox } from '../under.ts'
import { bubbles } from '../wet.ts'

const HOLES = [
  40, 66, 6, 62, 56, 4, 84, 64, 8, 110, 60, 5, 124, 78, 4, 50, 88, 7, 74, 88, 4, 98, 86, 7, 38, 112,
  4, 62, 116, 7, 88, 110, 4, 112, 112, 6, 80, 132, 4, 48, 134, 3, 104, 134, 3, 124, 98, 3
]
/** Dough from above: dull, with the swirl of the spoon. */
const dough = (...layers: readonly Layer[]) =>
  mouth(
    TINT.dough,
    stroke('M36 96q12 28 44 26t48-32M48 60q18-18 44-12M60 88q6 16 24 12', TINT.doughDark, 2.5),
    ...layers
  )
/** Thin liquid standing over dough, with a layer's own marks. */
const standing = (tint: string, edge: string, ...marks: readonly Layer[]) =>
  section(
    below(98, TINT.dough),
    bubbles(
      [44, 118, 3, 70, 112, 4, 96, 124, 3, 118, 114, 3, 62, 134, 3],
      '#F6E9CC',
      TINT.doughDark
    ),
    band(66, 98, tint),
    stroke('M25 98H135', edge, 2),
    ...marks,
    gleam(67, 34, 92, 5)
  )

/** Streaks through the paste, smeared by the spoon, with their widths. */
const STREAKS: readonly (readonly [string, number])[] = [
  ['M34 92Q62 60 98 63T126 54', 9],
  ['M46 88Q70 68 98 68T114 64', 9],
  ['M58 108Q78 92 116 86', 6],
  ['M64 120q10-4 18-4', 3]
]

/** Cracks of a dried crust, each thinning out. */
const CRACKS: readonly (readonly Point[])[] = [
  [
    [18, 66],
    [34, 76],
    [52, 70],
    [66, 78],
    [80, 76]
  ],
  [
    [60, 18],
    [56, 36],
    [62, 50],
    [52, 70]
  ],
  [
    [66, 78],
    [56, 96],
    [60, 112],
    [50, 132]
  ],
  [
    [140, 56],
    [126, 60],
    [116, 80]
  ],
  [
    [96, 144],
    [100, 126],
    [94, 108]
  ],
  [
    [22, 104],
    [40, 98],
    [56, 96]
  ],
  [
    [106, 20],
    [100, 38],
    [92, 62]
  ],
  [
    [134, 110],
    [122, 104],
    [112, 104]
  ]
]

/** Sourdough starter. */
export const DOUGHS: Record<string, Layer> = {
  'dough-bubbly': section(
    shape('M24 56Q80 34 136 56V134q0 12-12 12H36q-12 0-12-12z', TINT.dough),
    stroke('M25 56Q80 34 135 56', TINT.doughDark, 2),
    bubbles(HOLES, '#F8EDD4', TINT.doughDark),
    rubberBand(104)
  ),
  'dough-flat': section(
    below(104, TINT.dough),
    stroke('M25 104H135', TINT.doughDark, 3),
    rubberBand(104),
    bubbles([60, 124, 2, 98, 130, 2], '#F8EDD4', TINT.doughDark)
  ),
  'dough-hooch': standing('#A99C80', '#6F6449'),
  'dough-hooch-dark': standing('#4A4034', TINT.black),
  'dough-pink-streak': dough(
    ...STREAKS.map(([line, width]) => stroke(line, '#D66F86', width)),
    stroke('M38 92Q62 66 96 66T118 60M62 108Q82 95 110 91', TINT.pinkDark, 2.5),
    stroke('M44 82Q68 59 104 60M50 96Q66 76 92 71M66 110Q84 99 112 94', TINT.dough, 1.6),
    blots([108, 112, 6, 42, 66, 4, 122, 102, 3], '#D66F86', 0.3)
  ),
  'dough-pink-liquid': standing(
    '#EDB3B4',
    TINT.pinkDark,
    uprightsBox(24, 68, 136, 97, '#C76A7C', 6)
  ),
  'dough-fuzz': dough(
    tuft([60, 66], 21),
    tuft([104, 92], 23, MOLD.green),
    tuft([66, 116], 13, MOLD.black)
  ),
  'dough-dry-crust': mouth(
    TINT.crust,
    blots([80, 80, 61], '#CBB082', 0.03),
    shape('M92 62q16 4 24 18t-4 26-20 2-16-18 4-26z', TINT.dough),
    shape('M92 62q16 4 24 18t-4 26q16-6 22-20t-6-30-36 6z', '#D9C195'),
    ...CRACKS.map(line => shape(taper(line, 4), '#6E5227')),
    stroke('M92 62q16 4 24 18t-4 26-20 2-16-18 4-26z', '#6E5227', 2)
  ),
  'dough-insects': dough(
    flecks(14, '#4A2E14', { size: 2 }),
    all(maggot([62, 66], 0.4, 1.1), maggot([72, 104], 2.6, 1.1)),
    fly([104, 70], 1.2, 0.6),
    ...[beetle([104, 108]), beetle([52, 90]), beetle([92, 44])]
  )
}
