import { all, type Layer, stroke } from '../layer.ts'
import type { Point } from '../line.ts'
import { cover, mouth } from '../mouth.ts'
import { TINT } from '../tints.ts'
import { blots, flecks, uprightsIn } from '../under.ts'
import { highlight } from '../wet.ts'

const CENTER = [80, 80] as const
/** A colored spot lying on top, with an edge, and upright lines where only red would tell it. */
const spot = (spot: Point, r: number, tint: string, edge: string, lined = false) =>
  all(
    blots([spot[0], spot[1], r + 1.6], edge, 0.1),
    blots([spot[0], spot[1], r], tint, 0.1),
    ...(lined ? [uprightsIn(spot, r, edge)] : [])
  )

/** What colors are on the film or in it. */
export const COLORS: Record<string, Layer> = {
  'color-bright-on-top': mouth(
    TINT.film,
    highlight(CENTER, 58, { from: 150, to: 190 }),
    spot([60, 58], 19, TINT.pink, TINT.pinkDark, true),
    spot([104, 92], 21, TINT.orange, TINT.orangeDark, true),
    spot([60, 112], 12, TINT.pink, TINT.pinkDark, true),
    spot([108, 48], 10, '#F0D23C', '#97800E')
  ),
  'color-dark-on-top': mouth(
    TINT.film,
    highlight(CENTER, 58, { from: 150, to: 190 }),
    spot([58, 64], 16, TINT.green, TINT.greenDark),
    spot([98, 92], 20, '#3C3733', TINT.black),
    spot([64, 108], 10, TINT.blueDark, '#22415A'),
    spot([104, 48], 11, TINT.gray, '#4A463F'),
    spot([120, 68], 5, '#3C3733', TINT.black),
    spot([84, 124], 6, TINT.green, TINT.greenDark)
  ),
  'color-all-black': mouth(
    TINT.teaDeep,
    cover('#2E2825', { edge: TINT.black, bays: [60, 300], depth: 12 }),
    stroke(
      'M40 62q20 14 38 6t36-18M78 68q-6 18 4 30t4 28M86 98q16-2 32-14M62 76q-10 14-26 18',
      '#7A6A55',
      2
    )
  ),
  'color-even-tint': mouth(
    '#C8647F',
    cover('#D9849A', { edge: TINT.pinkDark, bays: [110], depth: 9 }),
    stroke(
      'M30 62V108M40 44V122M50 36V128M60 78V132M70 66V134M80 62V140M90 58V132M100 30V130M110 34V126M120 44V118M130 60V102',
      '#BE5F7C',
      1.8
    ),
    highlight(CENTER, 52, { from: 190, to: 258, width: 10 })
  ),
  'color-within-or-below': mouth(
    TINT.film,
    blots([66, 66, 21, 104, 96, 18, 64, 112, 11, 108, 48, 8], '#C49A5A', 0.2),
    blots([68, 68, 12, 106, 98, 9], '#9A6B30', 0.24),
    highlight(CENTER, 50, { from: 186, to: 250, width: 9 })
  ),
  'color-gritty-specks': mouth(
    TINT.film,
    flecks(60, '#4A2E16', { r: 58, size: 4 }),
    highlight(CENTER, 52, { from: 190, to: 240, width: 8 })
  ),
  'color-plain': mouth(
    TINT.film,
    blots([80, 80, 55], '#EDD9AE', 0.02),
    blots([82, 82, 38], TINT.cream, 0.03),
    highlight(CENTER, 54, { from: 190, to: 250, width: 9 })
  )
}
