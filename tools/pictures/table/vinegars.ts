import { eels, fly } from '../creatures.ts'
import { MOLD, tuft } from '../hair.ts'
import { all, type Layer, round, shape, stroke } from '../layer.ts'
import { mouth } from '../mouth.ts'
import { below, gleam, section } from '../section.ts'
import { folds, tear } from '../skin.ts'
import { TINT } from '../tints.ts'
import { blots } from '../under.ts'
import { highlight } from '../wet.ts'

const CENTER = [80, 80] as const
const mother = all(
  blots([82, 83, 53], TINT.teaDeep, 0.04),
  blots([79, 79, 53], '#D8A965', 0.04),
  blots([78, 78, 40], '#E2BC80', 0.05),
  blots([77, 77, 25], '#EBCF9E', 0.06)
)

/** Vinegar and its mother. */
export const VINEGARS: Record<string, Layer> = {
  'mother-disc': mouth(
    TINT.vinegar,
    mother,
    highlight([79, 79], 44, { from: 186, to: 262, width: 9 }),
    highlight([79, 79], 45, { from: 20, to: 50, width: 4 })
  ),
  'mother-fuzz': mouth(TINT.vinegar, mother, tuft([62, 64], 20), tuft([98, 96], 22, MOLD.green)),
  'vinegar-film': mouth(
    TINT.vinegar,
    shape(round(CENTER, 66), '#E2CFA2'),
    folds({ turn: -1.2, gap: 12, width: 6 }),
    tear(TINT.vinegar, 160, { depth: 30 })
  ),
  'vinegar-eels': section(
    below(40, TINT.vinegar),
    gleam(41),
    eels(
      [
        38, 56, 0.4, 58, 52, 1.3, 78, 60, -0.4, 98, 54, 0.9, 120, 58, 0.2, 46, 76, 1.8, 68, 80, 0.2,
        90, 76, 1.4, 114, 80, -0.7, 54, 102, 0.7, 84, 104, 1.9, 108, 106, 0.3, 70, 126, 1.1, 98,
        130, -0.3
      ],
      TINT.brown
    )
  ),
  'vinegar-fruit-flies': mouth(
    TINT.vinegar,
    shape('M30 96q14-14 30-8t18 20-16 22-30-8-2-26z', '#C9553C'),
    stroke('M30 96q14-14 30-8t18 20-16 22-30-8-2-26z', '#7A2A1C', 2),
    shape('M40 102q8-6 16-2t8 12-12 10-14-6 2-14z', TINT.cream),
    fly([60, 52], 1.25, -0.5),
    fly([104, 62], 1.25, 0.8),
    fly([104, 108], 1.25, 2.4),
    highlight(CENTER, 58, { from: 196, to: 230, width: 6 })
  )
}
