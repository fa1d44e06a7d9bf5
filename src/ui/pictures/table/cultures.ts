import { bottle, FORM } from '../bottles.ts'
import { MOLD, stand } from '../hair.ts'
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
  `<path fill="${TINT.metal}" stroke="currentColor" d="M62 10h36v16H62z"/>`
const label = all(
  shape('M48 92H112V132H48z', TINT.cream),
  ink('M48 92H112V132H48zM60 104H100M60 112H92M60 120H84')
)

/** Cultures, and what a new batch may be begun with. */
export const CULTURES: Record<string, Layer> = {
  'culture-in-liquid': section(
    below(52, TINT.tea),
    gleam(53, 34, 74, 4),
    disc(84, TINT.cream),
    disc(104),
    strand([60, 112], [56, 136], { width: 4 }),
    strand([98, 112], [104, 132], { width: 4 })
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
    ink('M22 42H138M22 132H138'),
    shape('M58 70H102V130H58z', TINT.tea),
    shape('M59 86q21-8 42 0t-42 0z', TINT.cream),
    ink('M58 62h44V132H58zM52 54h56v8H52z'),
    stroke('M80 14V36M70.5 19.5L89.5 30.5M89.5 19.5L70.5 30.5', TINT.blueDark, 3)
  ),
  'culture-store-jelly': all(
    bottle(
      FORM.store,
      TINT.tea,
      34,
      shape('M66 52q0-8 14-9t15 8-1 15-14 7-14-21z', TINT.cream),
      stroke('M66 52q0-8 14-9t15 8-1 15-14 7-14-21z', TINT.teaDeep, 2),
      shape('M69 53q2-6 10-6q-5 2-6 8z', TINT.white),
      stroke('M76 74q-4 8 2 16M86 74q4 6 0 14', TINT.strand, 2.5)
    ),
    label,
    STORE_CAP
  ),
  'culture-store-fuzz': all(
    bottle(FORM.store, TINT.tea, 66, shape('M50 62H110V70H50z', TINT.film)),
    shape('M66 40H94V44Q110 50 110 62H50Q50 50 66 44z', TINT.air),
    stand({ x: 80, y: 63, width: 46, height: 22 }),
    stand({ x: 90, y: 63, width: 20, height: 15 }, MOLD.green),
    label,
    STORE_CAP
  ),
  'culture-none-strong-liquid': section(
    below(40, '#A5692A'),
    below(92, '#8A5220'),
    gleam(41, 34, 84, 5),
    shape('M26 138Q80 130 134 138Q132 144.8 124 144.8H36Q28 144.8 26 138z', TINT.brown)
  ),
  'culture-from-friend': all(
    jar(TINT.tea, disc(98, TINT.cream, 80, 40)),
    cloth,
    () =>
      `<path fill="${TINT.white}" stroke="currentColor" d="M96 92L132 74 150 84V120L114 136z"/>`,
    ink('M108 48Q130 50 138 84M122 98l16-8M122 108l16-8'),
    shape('M134 86a3.5 3.5 0 1 0 7-1a3.5 3.5 0 1 0-7 1z', TINT.red)
  ),
  'culture-top-dry': section(
    below(92, TINT.tea),
    shape('M32 96Q32 62 60 58T106 60Q128 66 128 96 110 110 80 110T32 96z', TINT.film),
    shape('M32 88Q34 62 60 58T106 60Q126 66 128 88 104 76 80 78T32 88z', '#9C6A3C'),
    stroke('M50 66l8 10M76 58l-4 12 10 6M104 62l-6 10 8 6', '#54331A', 2),
    stroke('M32 96Q32 62 60 58T106 60Q128 66 128 96', TINT.brown, 2),
    gleam(93, 110, 134, 3)
  )
}
