import { shredsRound, slice } from '../foods.ts'
import { MOLD, powder, tuft } from '../hair.ts'
import { all, type Layer, shape, stroke } from '../layer.ts'
import { cover, mouth } from '../mouth.ts'
import { folds } from '../skin.ts'
import { TINT } from '../tints.ts'
import { blots, uprightsIn } from '../under.ts'
import { bubbles, highlight } from '../wet.ts'

const CENTER = [80, 80] as const
const LIGHT = highlight(CENTER, 56, { from: 196, to: 244, width: 7 })
/** Vegetables under brine, from above. */
const vegetables = (...layers: readonly Layer[]) =>
  mouth(TINT.brine, shredsRound(16, { tint: '#DDD7A4', dark: '#A9A362' }), ...layers)
const pink = (x: number, y: number, r: number) =>
  all(
    blots([[x, y, r + 2]], TINT.pinkDark, 0.14),
    blots([[x, y, r]], TINT.pink, 0.14),
    uprightsIn([x, y], r - 1, TINT.pinkDark)
  )

/** What may lie on brine, from above. */
export const BRINES: Record<string, Layer> = {
  'brine-clear': mouth(
    TINT.brineClear,
    shredsRound(30),
    slice([58, 66], 17),
    slice([102, 96], 19),
    slice([62, 112], 13),
    LIGHT
  ),
  'brine-fuzz': vegetables(
    tuft([58, 62], 20),
    tuft([104, 88], 24, MOLD.green),
    tuft([62, 112], 13, MOLD.gray)
  ),
  'brine-powder': vegetables(
    powder([62, 64], 28, { count: 150 }),
    powder([102, 98], 24, { count: 120 })
  ),
  'brine-dark-centers': vegetables(
    ...(
      [
        [56, 58, 19],
        [106, 74, 17],
        [66, 108, 15],
        [108, 116, 11]
      ] as const
    ).map(([x, y, r]) => all(tuft([x, y], r), blots([[x, y, r * 0.34]], TINT.black, 0.1)))
  ),
  'brine-flat-film': vegetables(
    cover('#E6DFC0', { edge: '#B5AA74', bays: [40, 215], depth: 24 }),
    folds({ step: 17, width: 3.5, near: 44, skin: { lit: '#F4EFDA', dark: '#B5AA7C' } })
  ),
  'brine-thick-film': mouth(
    TINT.brine,
    cover('#E2D5AE', { edge: TINT.skinDark, bays: [] }),
    folds({ bow: [10, 150], step: 13, width: 9, near: 30 })
  ),
  'brine-foam': vegetables(
    bubbles(
      [
        [52, 62, 13],
        [74, 50, 10],
        [70, 74, 14],
        [94, 62, 12],
        [48, 86, 10],
        [92, 88, 13],
        [112, 78, 9],
        [70, 98, 10],
        [112, 100, 8],
        [54, 106, 7],
        [92, 110, 8],
        [108, 52, 7],
        [36, 70, 6],
        [82, 32, 6],
        [76, 118, 6]
      ],
      '#F7EFD6',
      '#A8935C'
    ),
    LIGHT
  ),
  'brine-bubbles': mouth(
    TINT.brineClear,
    shredsRound(26),
    bubbles(
      [
        [56, 60, 5],
        [80, 50, 4],
        [100, 66, 6],
        [64, 90, 4],
        [88, 84, 5],
        [114, 92, 4],
        [72, 116, 6],
        [100, 112, 4],
        [48, 110, 4],
        [120, 62, 3]
      ],
      TINT.white,
      '#8B8146'
    ),
    LIGHT
  ),
  'brine-color-spots': vegetables(
    blots(
      [
        [56, 60, 18],
        [64, 112, 12]
      ],
      '#8E5A1D',
      0.12
    ),
    blots(
      [
        [56, 60, 16],
        [64, 112, 10]
      ],
      TINT.orange,
      0.12
    ),
    uprightsIn([56, 60], 14, TINT.orangeDark),
    blots([[104, 92, 21]], '#8F7A10', 0.12),
    blots([[104, 92, 19]], '#F0D23C', 0.12),
    blots([[110, 46, 10]], TINT.pinkDark, 0.12),
    uprightsIn([110, 46], 9, '#7C2238', 3)
  ),
  'brine-pink-patches': vegetables(pink(58, 62, 20), pink(106, 90, 18), pink(62, 114, 11)),
  'garlic-blue': mouth(
    TINT.brineClear,
    ...(
      [
        [58, 66, 0],
        [102, 62, 1],
        [72, 108, 1],
        [112, 108, 0]
      ] as const
    ).map(([x, y, blue]) =>
      all(
        shape(`M${x} ${y - 24}q18 14 16 30t-16 14-16-14 16-30z`, blue ? TINT.blue : '#F3EBD2'),
        stroke(
          `M${x} ${y - 24}q18 14 16 30t-16 14-16-14 16-30zM${x} ${y - 14}q6 14 2 28`,
          blue ? TINT.blueDark : TINT.shade,
          2
        ),
        ...(blue ? [] : [shape(`M${x + 2} ${y + 2}q11 2 11 8q-4 8-12 8q8-6 1-16z`, TINT.blue)])
      )
    ),
    LIGHT
  )
}
