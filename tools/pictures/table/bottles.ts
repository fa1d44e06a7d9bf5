import { bottle, FORM, neck, swingTop } from '../bottles.ts'
import { drop } from '../creatures.ts'
import { MOLD, tuft } from '../hair.ts'
import { stand } from '../hair-side.ts'
import { all, ink, type Layer, round, shape, stroke } from '../layer.ts'
import { ridges } from '../skin.ts'
import { TINT } from '../tints.ts'
import { flecks } from '../under.ts'
import { bubbles, foam } from '../wet.ts'

const swing = (level: number, ...layers: readonly Layer[]) =>
  bottle(FORM.swing, TINT.tea, level, ...layers)
const fizz = bubbles(
  [66, 100, 3, 92, 96, 2.5, 78, 116, 3.5, 98, 124, 2.5, 64, 132, 3, 86, 138, 2.5, 80, 78, 2.5],
  TINT.teaPale,
  TINT.teaDeep
)
const film = (y: number) => shape(`M53 ${y}H107V${y + 9}H53z`, TINT.cream)
const fruit = (x: number, y: number, r: number) =>
  all(shape(round([x, y], r), TINT.berry), stroke(round([x, y], r), '#4F1530', 2))
const leak = shape('M20 148q20-8 60-6t60 6q-10 6-60 6t-60-6z', TINT.tea)

/** Signs of a sealed bottle. */
export const BOTTLES: Record<string, Layer> = {
  'bottle-cap-bulging': all(
    bottle(FORM.plastic, TINT.tea, 44, fizz),
    () => `<path fill="${TINT.red}" stroke="currentColor" d="M62 26V18Q80-6 98 18V26z"/>`,
    ink('M62 20H98M44 16l-8-6M116 16l8-6M40 30H30M120 30h10')
  ),
  'bottle-hissing': all(
    swing(56, fizz),
    swingTop,
    ink(
      'M58 28q-8-4-14 0t-14 0M58 38q-10 2-14 8t-14 6M102 28q8-4 14 0t14 0M102 38q10 2 14 8t14 6M56 20q-6-8-14-8M104 20q6-8 14-8'
    )
  ),
  'bottle-cracked': all(
    swing(
      56,
      stroke(
        'M58 78L70 92 62 106 84 114 76 130 92 142M84 114L104 106M62 106L50 112M70 92L86 84',
        TINT.black,
        2.5
      )
    ),
    swingTop
  ),
  'bottle-leaking': all(
    leak,
    swing(70),
    swingTop,
    shape('M91 36q9 4 7 20 14 10 16 30t-1 40q-3 6-5 0 2-44-8-58-8-8-9-32z', '#B06F22'),
    drop([120, 120], 5, '#B06F22')
  ),
  'bottle-burst': all(
    shape('M14 142q30-10 66-8t66 8q-20 12-66 12t-66-12z', TINT.tea),
    () =>
      `<path fill="${TINT.glass}" stroke="currentColor" d="M50 146V112L60 122 66 100 78 118 88 96 96 116 110 104V146q0 4-8 4H58q-8 0-8-4zM24 60L44 48 38 74zM120 52L138 66 114 74zM66 26L90 34 76 54zM20 96L34 92 30 112zM130 96L142 92 140 112z"/>`,
    ink('M52 92L44 82M108 90L118 82M80 82V68M62 72L54 58M100 72L108 58')
  ),
  'bottle-gushing': all(
    swing(34, fizz),
    foam([
      80, 12, 11, 66, 18, 9, 94, 18, 9, 58, 30, 8, 102, 30, 8, 52, 44, 7, 108, 44, 7, 48, 58, 6,
      112, 58, 6, 80, 28, 10, 70, 34, 7, 90, 34, 7, 46, 72, 5, 114, 72, 5, 44, 84, 4, 116, 86, 4
    ]),
    stroke('M40 16l-8-8M120 16l8-8M30 34H20M130 34h10', TINT.tea, 3),
    stroke('M44 100v12M116 102v16M42 124v6M118 130v6', TINT.tea, 4)
  ),
  'bottle-fuzz': neck(
    TINT.tea,
    74,
    film(72),
    stand({ x: 80, y: 73, width: 50, height: 34 }),
    stand({ x: 94, y: 73, width: 22, height: 20 }, MOLD.green)
  ),
  'bottle-fruit-fuzz': neck(
    TINT.tea,
    76,
    fruit(68, 78, 12),
    fruit(92, 80, 13),
    fruit(80, 100, 10),
    tuft([70, 64], 12),
    tuft([92, 66], 14, MOLD.green)
  ),
  'bottle-fruit-floating': neck(
    TINT.tea,
    66,
    fruit(66, 76, 12),
    fruit(92, 78, 13),
    fruit(78, 100, 11),
    fruit(104, 104, 9),
    shape('M58 70q3-6 9-6q-5 3-5 8zM83 72q3-6 10-6q-6 3-6 8zM71 94q2-4 7-4q-4 2-4 6z', TINT.white)
  ),
  'bottle-jelly': neck(
    TINT.tea,
    50,
    shape('M54 84q-4-16 26-18t28 18q2 12-27 12T54 84z', TINT.film),
    shape('M57 80q2-12 24-12t24 12q-4 10-24 10t-24-10z', TINT.cream),
    shape('M62 77q3-7 16-7q-9 3-11 8z', TINT.white),
    stroke('M66 96q-6 14 2 26M84 97q6 12-2 30', TINT.strand, 2.5)
  ),
  'bottle-neck-film': neck(
    TINT.tea,
    66,
    shape('M53 64H107V72Q80 78 53 72z', TINT.cream),
    stroke('M53 72Q80 78 107 72', TINT.filmEdge, 2),
    shape('M57 65.5q12-4 26 0q-13 4-26 0z', TINT.white)
  ),
  'bottle-wrinkled-film': neck(
    TINT.tea,
    74,
    ridges(73, { from: 53, to: 107, height: 7, thick: 7 })
  ),
  'bottle-sediment': all(
    swing(
      56,
      shape(
        'M51 132Q66 126 80 129T109 131V142Q109 148.5 102 148.5H58Q51 148.5 51 142z',
        TINT.brown
      ),
      flecks(16, TINT.brown, { at: [80, 122], r: 24, squash: 0.4, size: 2 })
    ),
    swingTop
  ),
  'bottle-flat': all(
    () => `<g transform="translate(-28 0)">${all(swing(78), ink('M66 32V22h28V32'))(() => 0)}</g>`,
    shape('M98 76H146L141 150H103z', TINT.glass),
    shape('M99.4 96H144.6L141 150H103z', TINT.tea),
    stroke('M101 97H143', TINT.teaDeep, 2),
    ink('M98 76H146L141 150H103z')
  )
}
