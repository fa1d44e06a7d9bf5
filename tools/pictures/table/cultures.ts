import { bottle, FORM } from '../bottles.ts'
import { MOLD } from '../hair.ts'
import { stand } from '../hair-side.ts'
import { cloth, jar } from '../jars.ts'
import { all, ink, type Layer, shape, stroke } from '../layer.ts'
import { below, gleam, section } from '../section.ts'
import { TINT } from '../tints.ts'
import { strand } from '../under.ts'

/** A disc of culture seen from its edge. */
const disc = (y: number, tint: string = TINT.film, x = 80, half = 46) =>
  all(
    shape(`M${x - half} ${y}q0-9 ${half}-9t${half} 9-${half} 9-${half}-9z`, tint),
    stroke(`M${x - half} ${y}q0-9 ${half}-9t${half} 9-${half} 9-${half}-9z`, TINT.teaDeep, 2)
  )
const STORE_CAP: Layer = () =>
  `<path fill="${TINT.metal}" stroke="currentColor" d="M56 10h48v16H56z"/>`
const label = all(
  shape('M46 96H114V134H46z', TINT.cream),
  stroke('M46 96H114V134H46zM60 108H100M60 116H92M60 124H84', TINT.black, 2.5)
)

/** Cultures, and what a new batch may be begun with. */
export const CULTURES: Record<string, Layer> = {
  'culture-in-liquid': section(
    below(52, TINT.tea),
    gleam(53, 34, 74, 4),
    disc(84, TINT.cream),
    disc(104),
    strand([60, 112], [56, 136], { threads: 3, fray: 5, sway: 3 }),
    strand([98, 112], [104, 132], { threads: 3, fray: 5, sway: 3 })
  ),
  'culture-dried': all(
    shape('M8 104a72 32 0 0 0 144 0a72 32 0 0 0-144 0z', TINT.glass),
    ink('M8 104a72 32 0 0 0 144 0a72 32 0 0 0-144 0zM12 110q10 34 68 34t68-34'),
    shape(
      'M34 100L40 66 62 78 84 58 104 70 124 62 128 98 112 116 88 108 66 120 48 108z',
      '#7F5228'
    ),
    shape('M38 98L44 74 62 84 84 66 104 78 120 70 122 94 108 108 88 100 66 112 50 102z', '#B07B42'),
    stroke('M50 84l12 12 14-4 8 8M84 68l2 14 16 6 6 12M112 78l-8 10', '#5B3616', 2)
  ),
  'culture-chilled': all(
    () =>
      `<path fill="${TINT.glass}" stroke="currentColor" d="M28 8H132q6 0 6 6V146q0 6-6 6H28q-6 0-6-6V14q0-6 6-6z"/>`,
    stroke('M22 42H138M22 132H138', TINT.black, 2.5),
    shape('M58 70H102V130H58z', TINT.tea),
    shape('M59 86q21-8 42 0t-42 0z', TINT.cream),
    stroke('M58 62h44V132H58zM52 54h56v8H52z', TINT.black, 2.5),
    stroke('M80 14V36M70.5 19.5L89.5 30.5M89.5 19.5L70.5 30.5', TINT.blueDark, 3)
  ),
  'culture-store-jelly': all(
    bottle(
      FORM.store,
      TINT.tea,
      34,
      shape('M61 46q0-10 19-10t19 10-2 14-17 8-17-8-2-14z', TINT.cream),
      stroke('M61 46q0-10 19-10t19 10-2 14-17 8-17-8-2-14z', TINT.teaDeep, 2),
      shape('M65 47q2-7 14-7q-8 2-9 9z', TINT.white),
      stroke('M74 69q-4 8 2 18M86 68q4 8 0 16', TINT.strand, 2.5)
    ),
    label,
    STORE_CAP
  ),
  'culture-store-fuzz': all(
    bottle(FORM.store, TINT.tea, 62),
    shape('M58 26H102V62H58z', TINT.air),
    shape('M58 58H102V66H58z', TINT.film),
    stand({ x: 80, y: 59, width: 40, height: 30 }),
    stand({ x: 91, y: 59, width: 18, height: 18 }, MOLD.green),
    ink('M58 26V58M102 26V58'),
    label,
    STORE_CAP
  ),
  'culture-none-strong-liquid': section(
    below(40, '#94581F'),
    gleam(41, 34, 94, 6),
    () =>
      `<path stroke="${TINT.film}" stroke-width="2.5" stroke-dasharray="5 6" d="M36 66q0-9 44-9t44 9-44 9-44-9z"/>`,
    strand([58, 92], [52, 124], { threads: 3, fray: 5, sway: 3 }),
    strand([98, 88], [106, 126], { threads: 3, fray: 5, sway: 3 }),
    shape('M26 138Q80 130 134 138Q132 144.8 124 144.8H36Q28 144.8 26 138z', TINT.brown)
  ),
  'culture-from-friend': all(
    jar(TINT.tea, disc(98, TINT.cream, 80, 40)),
    cloth,
    () =>
      `<path fill="${TINT.white}" stroke="currentColor" d="M96 92L132 74 150 84V120L114 136z"/>`,
    ink('M108 48Q130 50 138 84'),
    stroke('M120 98l16-8M120 108l16-8', TINT.black, 2.5),
    shape('M134 86a3.5 3.5 0 1 0 7-1a3.5 3.5 0 1 0-7 1z', TINT.red)
  ),
  'culture-top-dry': section(
    below(96, TINT.tea),
    shape('M32 104Q28 82 46 78T84 70 118 78 130 88 126 104Q108 116 78 116T32 104z', TINT.cream),
    shape('M31 94Q32 80 46 78T84 70 118 78 129 94Q112 100 80 96T31 94z', '#9C6A3C'),
    stroke('M48 78l4 10M66 74l-4 10 10 10M90 71l6 12-6 12M112 77l-8 8 6 12', '#54331A', 2),
    stroke('M32 104Q28 82 46 78T84 70 118 78 130 88 126 104Q108 116 78 116T32 104z', TINT.brown, 2),
    strand([60, 116], [56, 136], { threads: 3, fray: 5, sway: 3 })
  )
}
