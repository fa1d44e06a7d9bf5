import { crystals, grains } from '../foods.ts'
import { MOLD, tuft } from '../hair.ts'
import { all, type Layer, round, shape, stroke } from '../layer.ts'
import { cover, mouth } from '../mouth.ts'
import { below, gleam, section } from '../section.ts'
import { folds } from '../skin.ts'
import { TINT } from '../tints.ts'
import { blots, flecks, uprightsIn } from '../under.ts'
import { bubbles, highlight } from '../wet.ts'

const CENTER = [80, 80] as const
const LIGHT = highlight(CENTER, 57, { from: 196, to: 240, width: 7 })
// In shade, so that its light and pale hair still show on it.
const SHADED = '#E6D8BC'

/** Milk kefir, water kefir and yogurt. */
export const MILK: Record<string, Layer> = {
  'kefir-grains': mouth(
    SHADED,
    grains(
      [
        [58, 62, 23],
        [104, 70, 20],
        [74, 106, 22],
        [112, 110, 14],
        [44, 98, 11]
      ],
      '#B59F73'
    ),
    LIGHT
  ),
  'kefir-fuzz': mouth(
    SHADED,
    grains(
      [
        [100, 64, 20],
        [60, 104, 20]
      ],
      '#B59F73'
    ),
    tuft([62, 62], 20),
    tuft([104, 104], 21, MOLD.green)
  ),
  'kefir-film': mouth(
    SHADED,
    cover('#D9C8A2', { edge: '#9E8A5E', bays: [40], depth: 26 }),
    folds({ step: 14, width: 4.5, skin: { lit: '#F3E9D0', dark: '#A08B5C' } })
  ),
  'kefir-pink': mouth(
    SHADED,
    ...(
      [
        [60, 64, 20],
        [104, 88, 23],
        [66, 114, 11]
      ] as const
    ).map(([x, y, r]) =>
      all(
        blots([[x, y, r + 2]], TINT.pinkDark, 0.14),
        blots([[x, y, r]], TINT.pink, 0.14),
        uprightsIn([x, y], r - 1, TINT.pinkDark)
      )
    ),
    LIGHT
  ),
  'kefir-dry-fat': section(
    below(84, SHADED),
    shape('M25 70q4 3 3 8t6 8 12 0 16 3 18-2 20 3 14-4 12 1 5-8 4-9V92Q80 102 25 92z', '#D9BE7C'),
    stroke('M25 70q4 3 3 8t6 8 12 0 16 3 18-2 20 3 14-4 12 1 5-8 4-9', '#8A6A2C', 2.2),
    flecks(26, '#8A6A2C', { at: [80, 91], r: 50, squash: 0.08, size: 2.5 })
  ),
  'kefir-whey': section(
    below(50, TINT.milk),
    shape('M25 92q14-8 26 0t28-2 28 4 28-4V118q-20 6-40 0t-40 2-30-4z', TINT.whey),
    stroke('M25 92q14-8 26 0t28-2 28 4 28-4M25 116q10 6 30 4t40-2 40 0', '#94862F', 2),
    blots(
      [
        [56, 104, 5],
        [92, 108, 6],
        [114, 102, 4]
      ],
      TINT.milk
    ),
    gleam(51)
  ),
  'yogurt-set': all(
    section(
      below(70, TINT.milk),
      shape('M56 70H96Q94 90 76 92T56 70z', '#D9C6A0'),
      stroke('M56 70Q58 92 76 92T96 70', '#A08B5C', 2),
      gleam(71, 104, 132, 3)
    ),
    shape('M58 48Q66 38 78 38T94 50Q92 62 78 64T58 48z', TINT.milk),
    stroke('M58 48Q66 38 78 38T94 50', '#A08B5C', 2),
    () =>
      `<path fill="${TINT.metal}" stroke="currentColor" d="M54 50Q76 54 98 48Q96 68 76 68T54 50zM97 52L140 8"/>`
  ),
  'yogurt-not-set': all(
    section(
      below(84, TINT.milk),
      stroke('M58 90q18 8 36 0M50 98q26 10 52 0', '#A08B5C', 2),
      gleam(85, 28, 52, 3)
    ),
    shape('M62 62q2 12 1 26h6q0-14 3-24zM80 66q-1 10 0 20h5q0-12 1-22z', TINT.milk),
    () =>
      `<path fill="${TINT.metal}" stroke="currentColor" d="M54 50Q76 54 98 48Q96 68 76 68T54 50zM97 52L140 8"/>`,
    shape('M56 51Q76 55 97 49Q80 60 56 51z', TINT.milk)
  ),
  'yogurt-bubbles': section(
    below(58, TINT.milk),
    shape('M24 60Q80 40 136 60z', TINT.milk),
    bubbles(
      [
        [40, 74, 5],
        [62, 64, 6],
        [88, 66, 5],
        [112, 74, 6],
        [52, 94, 4],
        [78, 86, 7],
        [104, 98, 5],
        [40, 116, 4],
        [66, 114, 5],
        [92, 120, 6],
        [118, 118, 4],
        [78, 136, 3]
      ],
      '#CDB98F',
      '#8F7A4C'
    )
  ),
  'yogurt-fuzz': mouth(
    TINT.milk,
    stroke(round(CENTER, 58), TINT.milkDark, 2.5),
    blots(
      [
        [60, 64, 24],
        [102, 96, 26],
        [62, 112, 14]
      ],
      '#D9C6A0',
      0.1
    ),
    tuft([60, 64], 19, MOLD.gray),
    tuft([102, 96], 22, MOLD.green),
    tuft([62, 112], 11)
  ),
  'water-kefir-grains': section(
    below(46, '#E3CF9C'),
    gleam(47),
    crystals([
      [40, 132, 11],
      [60, 134, 10],
      [82, 132, 12],
      [104, 134, 11],
      [123, 131, 10],
      [50, 116, 10],
      [72, 114, 11],
      [96, 116, 11],
      [116, 114, 9]
    ]),
    bubbles(
      [
        [48, 90, 3],
        [70, 78, 4],
        [96, 88, 3],
        [112, 70, 3],
        [84, 62, 3]
      ],
      TINT.white,
      TINT.shade
    )
  ),
  'water-kefir-thick': all(
    section(
      below(92, '#D9BE80'),
      crystals([
        [46, 134, 9],
        [68, 133, 10],
        [92, 134, 10],
        [114, 133, 9]
      ])
    ),
    shape('M62 50Q68 74 62 96H98Q92 74 94 50z', '#E3CF9C'),
    stroke('M70 56Q74 74 70 96M80 56V96M88 56Q85 74 90 96', '#9A7C3C', 2),
    () =>
      `<path fill="${TINT.metal}" stroke="currentColor" d="M50 32Q80 38 106 30Q104 52 78 52T50 32zM105 34L148 8"/>`,
    shape('M53 34Q80 39 104 32Q90 45 53 34z', '#E3CF9C')
  )
}
