import { colony, MOLD, powder, tuft } from '../hair.ts'
import { type Layer, shape, stroke } from '../layer.ts'
import { cover, mouth } from '../mouth.ts'
import { folds, tear } from '../skin.ts'
import { TINT } from '../tints.ts'
import { blots, clot, flecks, strand } from '../under.ts'
import { blisters, highlight, islands } from '../wet.ts'

const CENTER = [80, 80] as const

const CRUMBS = [
  40, 76, 3, 46, 88, 2, 82, 112, 3, 84, 66, 2, 118, 84, 3, 74, 122, 2, 104, 70, 2, 58, 44, 2, 92,
  104, 2, 124, 78, 2, 44, 120, 2, 66, 34, 2, 112, 94, 2, 88, 128, 3, 74, 90, 2, 110, 50, 3
]

/** Three islands run into one. */
const MERGED = [
  52, 100, 58, 82, 76, 76, 88, 84, 96, 80, 110, 72, 126, 82, 126, 102, 108, 110, 108, 122, 102, 136,
  86, 134, 82, 122, 68, 124, 54, 116
]

/** What may lie on the surface, from above. */
export const SURFACE: Record<string, Layer> = {
  'dry-fuzzy': mouth(
    TINT.teaPale,
    tuft([57, 60], 22),
    tuft([100, 92], 26, MOLD.green),
    tuft([58, 112], 12)
  ),
  'early-mold': mouth(
    TINT.teaPale,
    tuft([60, 62], 14, MOLD.young),
    tuft([104, 84], 17, MOLD.young),
    tuft([66, 112], 10, MOLD.young),
    tuft([112, 46], 7, MOLD.young)
  ),
  'chalky-powder': mouth(
    '#C99F5C',
    powder([60, 62], 30, { count: 200 }),
    powder([100, 100], 26, { count: 160 })
  ),
  'dry-raised-circles': mouth(
    TINT.teaPale,
    colony([58, 58], 24),
    colony([107, 78], 20),
    colony([66, 114], 15)
  ),
  'falling-apart': mouth(
    TINT.tea,
    blots([52, 60, 14, 118, 60, 9, 104, 116, 12, 46, 104, 10, 84, 36, 7], TINT.teaDeep, 0.3),
    blots([68, 66, 21, 98, 84, 15, 60, 104, 10, 92, 48, 9, 112, 104, 7], TINT.cream, 0.36),
    blots(CRUMBS, TINT.cream, 0.3)
  ),
  'dry-leathery': mouth(
    TINT.tea,
    blots([82, 84, 52], TINT.teaDeep, 0.05),
    blots([79, 79, 51], TINT.filmEdge, 0.05),
    blots([78, 78, 39], '#9C6A3C', 0.08),
    stroke(
      'M52 66q12 8 24 4t22-14M76 70q-4 14 4 24t6 22M80 94q14-2 30-12M80 94q-16 4-26 0M58 94q-4 8-2 14M98 56q4 6 12 8',
      '#54331A',
      2
    )
  ),
  'flat-wrinkled-film': mouth(TINT.skin, folds({ gap: 12, width: 6 }), tear(TINT.tea, 48)),
  'strands-or-sediment': mouth(
    TINT.tea,
    shape('M25 118Q54 134 80 131T135 117A66 66 0 0 1 25 118z', TINT.teaDeep),
    flecks(26, TINT.brown, { at: [80, 134], r: 38, squash: 0.16, size: 2 }),
    strand([66, 28], [58, 74], { sway: 6 }),
    strand([60, 60], [46, 112], { sway: 7, fray: 14 }),
    strand([96, 36], [100, 82], { sway: 6 }),
    strand([99, 70], [86, 120], { sway: 7, fray: 16 }),
    strand([102, 74], [124, 106], { sway: 5, fray: 12 }),
    clot([60, 68], 6),
    clot([100, 74], 7),
    highlight(CENTER, 55, { from: 196, to: 236, width: 7 })
  ),
  'wet-islands': mouth(
    TINT.tea,
    islands([52, 56, 20, 112, 46, 11, 38, 110, 8, 86, 34, 6, 134, 68, 5], {
      lit: [0, 1, 2],
      merged: MERGED
    }),
    highlight([76, 100], 15, { width: 6 })
  ),
  'wet-bumps-or-blisters': mouth(
    TINT.film,
    blisters([
      54, 58, 17, 100, 84, 21, 62, 108, 13, 106, 42, 9, 112, 118, 8, 34, 86, 6, 80, 34, 5, 132, 86,
      5, 84, 126, 6
    ])
  ),
  'wet-film': mouth(
    TINT.tea,
    cover('#DDB675', { bays: [40, 118], depth: 9 }),
    highlight(CENTER, 52, { from: 190, to: 262, width: 10 }),
    highlight(CENTER, 52, { from: 20, to: 44, width: 4 })
  ),
  'nothing-yet': mouth(
    TINT.tea,
    shape('M52 90c0-14 20-24 40-22s34 12 32 24-22 20-42 17-30-8-30-19z', TINT.teaDeep),
    shape('M50 84c0-13 20-21 40-20s34 10 33 21-22 17-42 15-31-6-31-16z', '#D7A35A'),
    stroke('M66 82q8-8 22-7M92 90q8 0 14-6', '#B07834', 2),
    highlight(CENTER, 55, { from: 196, to: 244, width: 8 })
  )
}
