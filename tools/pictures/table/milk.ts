import { crystals, grains } from '../foods.ts'
import { MOLD, tuft } from '../hair.ts'
import { all, type Layer, round, shape, stroke } from '../layer.ts'
import { spotsOf } from '../line.ts'
import { mouth } from '../mouth.ts'
import { below, gleam, near, section } from '../section.ts'
import { folds, tear } from '../skin.ts'
import { TINT } from '../tints.ts'
import { blots, flecks, uprightsIn } from '../under.ts'
import { bubbles, highlight } from '../wet.ts'

const CENTER = [80, 80] as const
const LIGHT = highlight(CENTER, 57, { from: 196, to: 240, width: 7 })
// In shade, so that its light and pale hair still show on it.
const SHADED = '#E6D8BC'

const SPOON: Layer = () =>
  `<path fill="${TINT.metal}" stroke="currentColor" d="M42 50q30 6 66-2-4 22-32 22T42 50zM107 51L154 4"/>`

/** Milk kefir, water kefir and yogurt. */
export const MILK: Record<string, Layer> = {
  'kefir-grains': mouth(
    SHADED,
    grains([58, 62, 23, 104, 70, 20, 74, 106, 22, 112, 110, 14, 44, 98, 11], '#B59F73'),
    LIGHT
  ),
  'kefir-fuzz': mouth(
    SHADED,
    grains([100, 64, 20, 60, 104, 20], '#B59F73'),
    tuft([62, 62], 20),
    tuft([104, 104], 21, MOLD.green)
  ),
  'kefir-film': mouth(
    SHADED,
    shape(round(CENTER, 66), '#D8C8A2'),
    folds({ gap: 12, width: 6, turn: 0.3, skin: { lit: '#EFE4CA', dark: '#9E8A5E' } }),
    tear(TINT.milk, 70, { edge: '#9E8A5E' })
  ),
  'kefir-pink': mouth(
    SHADED,
    ...spotsOf([60, 64, 20, 104, 88, 23, 66, 114, 11]).map(([x, y, r]) =>
      all(
        blots([x, y, r + 2], TINT.pinkDark, 0.14),
        blots([x, y, r], TINT.pink, 0.14),
        uprightsIn([x, y], r - 1, TINT.pinkDark)
      )
    ),
    LIGHT
  ),
  'kefir-dry-fat': near(
    104,
    TINT.milk,
    shape('M15 62q8 2 10 12t10 14 16 8 30 4 30-4 18-10 8-14 8-10V110Q80 116 15 110z', '#DDB968'),
    stroke('M15 62q8 2 10 12t10 14 16 8 30 4 30-4 18-10 8-14 8-10', '#7E5E22', 2.2),
    stroke(
      'M22 84l8 12 4 12M58 98l6 10M96 99l-4 10M128 90l-6 10-2 10M140 78l-6 8M15 96l10 4',
      '#7E5E22',
      1.8
    ),
    flecks(14, '#9A7630', { at: [80, 106], r: 58, squash: 0.05, size: 3 })
  ),
  'kefir-whey': section(
    below(50, TINT.milk),
    stroke('M25 50H135', '#8F7A4C', 1.5),
    shape('M25 92q14-8 26 0t28-2 28 4 28-4V118q-20 6-40 0t-40 2-30-4z', TINT.whey),
    stroke('M25 92q14-8 26 0t28-2 28 4 28-4M25 116q10 6 30 4t40-2 40 0', '#94862F', 2),
    blots([56, 104, 5, 92, 108, 6, 114, 102, 4], TINT.milk),
    gleam(51)
  ),
  'yogurt-set': all(
    near(
      96,
      TINT.milk,
      shape('M46 96H100Q98 122 74 124T46 96z', '#CDB98F'),
      stroke('M46 96Q48 122 74 124T100 96', '#8F7A4C', 2),
      gleam(97, 106, 142, 5)
    ),
    shape('M44 48Q48 30 74 28T104 46L102 54H46z', TINT.milk),
    stroke('M44 48Q48 30 74 28T104 46M58 40q10-6 24-4', '#8F7A4C', 2),
    SPOON
  ),
  'yogurt-not-set': all(
    near(
      96,
      TINT.milk,
      shape('M66 70q-2 14-6 28h36q-6-14-7-28z', TINT.milk),
      stroke('M40 104q34 12 70 0M30 114q46 18 94 0', '#8F7A4C', 2),
      gleam(97, 20, 48, 5)
    ),
    SPOON,
    shape('M46 51q30 6 58-1q-2 6-14 8-2 20 6 40H62q8-20 4-38-16-2-20-9z', TINT.milk),
    stroke('M72 62q0 18-3 34M84 62q0 18 4 34', '#B9A477', 2)
  ),
  'yogurt-bubbles': section(
    below(58, TINT.milk),
    shape('M24 60Q80 40 136 60z', TINT.milk),
    stroke('M25 59Q80 40 135 59', '#8F7A4C', 1.5),
    bubbles(
      [
        40, 74, 5, 62, 64, 6, 88, 66, 5, 112, 74, 6, 52, 94, 4, 78, 86, 7, 104, 98, 5, 40, 116, 4,
        66, 114, 5, 92, 120, 6, 118, 118, 4, 78, 136, 3
      ],
      '#CDB98F',
      '#8F7A4C'
    )
  ),
  'water-kefir-grains': section(
    below(46, '#E3CF9C'),
    gleam(47),
    crystals([
      40, 132, 11, 60, 134, 10, 82, 132, 12, 104, 134, 11, 123, 131, 10, 50, 116, 10, 72, 114, 11,
      96, 116, 11, 116, 114, 9
    ]),
    bubbles([48, 90, 3, 70, 78, 4, 96, 88, 3, 112, 70, 3, 84, 62, 3], TINT.white, TINT.shade)
  ),
  'water-kefir-thick': all(
    section(below(92, '#D9BE80'), crystals([46, 134, 9, 68, 133, 10, 92, 134, 10, 114, 133, 9])),
    shape('M62 50Q68 74 62 96H98Q92 74 94 50z', '#E3CF9C'),
    stroke('M70 56Q74 74 70 96M80 56V96M88 56Q85 74 90 96', '#9A7C3C', 2),
    () =>
      `<path fill="${TINT.metal}" stroke="currentColor" d="M50 32Q80 38 106 30Q104 52 78 52T50 32zM105 34L148 8"/>`,
    shape('M53 34Q80 39 104 32Q90 45 53 34z', '#E3CF9C')
  )
}
