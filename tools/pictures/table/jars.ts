import { drop, eels, fly, maggot } from '../creatures.ts'
import { cloth, crock, jar } from '../jars.ts'
import { all, ink, type Layer, round, shape, stroke } from '../layer.ts'
import { mouth } from '../mouth.ts'
import { below, lidded, section } from '../section.ts'
import { TINT } from '../tints.ts'
import { blots } from '../under.ts'
import { highlight } from '../wet.ts'

const CENTER = [80, 80] as const
/** A lid pushed up in its middle by gas. */
export const bulgedLid: Layer = () =>
  `<path fill="${TINT.metal}" stroke="currentColor" d="M12 24Q14 14 40 12Q80-6 120 12q26 2 28 12z"/><path stroke="currentColor" d="M12 24h136v7H12z"/>`

/** Signs about the jar itself, its guests and its liquid. */
export const JARS: Record<string, Layer> = {
  'insects-inside': mouth(
    TINT.film,
    highlight(CENTER, 56, { from: 190, to: 240, width: 7 }),
    maggot([64, 66], 0.5, 1.25),
    maggot([100, 80], -0.7, 1.25),
    maggot([70, 104], 2.6, 1.25),
    maggot([112, 112], 1.2, 1),
    fly([112, 46], 1.15, 0.5)
  ),
  'tiny-eels': mouth(
    TINT.tea,
    blots([80, 84, 44], '#E3B56C', 0.03),
    eels(
      [
        62, 64, 0.3, 82, 60, 1.2, 100, 70, -0.6, 60, 84, 1.9, 80, 82, 0.1, 104, 90, 0.9, 70, 104,
        -0.5, 92, 106, 1.6, 112, 108, 0.2, 50, 102, 1, 86, 122, -0.2, 36, 70, 0.8, 122, 66, 1.4, 44,
        46, -0.4, 128, 96, 2, 66, 130, 0.5
      ],
      TINT.brown
    ),
    highlight(CENTER, 56, { from: 200, to: 240, width: 7 })
  ),
  'flies-outside': all(
    jar(TINT.tea),
    cloth,
    fly([60, 30], 0.85, -0.6),
    fly([102, 52], 0.85, 0.9),
    fly([140, 26], 0.85, 0.3),
    fly([22, 50], 0.8, -0.9)
  ),
  'lid-bulging': lidded(
    bulgedLid,
    below(60, TINT.tea),
    stroke('M80 52V38m-7 7 7-8 7 8M50 54V44m-6 6 6-7 6 7M110 54V44m-6 6 6-7 6 7', TINT.white, 3)
  ),
  'cracked-glass': all(
    jar(TINT.tea),
    stroke(
      'M62 58L74 78 66 92 86 108 80 124 94 136 90 148M86 108L108 102 118 112M66 92L44 98 36 112M74 78L92 70',
      TINT.black,
      2.5
    )
  ),
  'glazed-crock': crock(
    shape('M34 66H126Q131 104 122 126 80 136 38 126 29 104 34 66z', '#5D86A0'),
    stroke('M40 118q10-14 20 0t20 0 20 0 20 0', TINT.white, 3),
    shape(
      `${round([80, 90], 9)}${round([62, 90], 7)}${round([98, 90], 7)}${round([71, 76], 7)}${round([89, 76], 7)}${round([71, 103], 7)}${round([89, 103], 7)}`,
      TINT.cream
    ),
    shape(round([80, 90], 6), TINT.orange),
    highlight([80, 110], 44, { from: 196, to: 226, width: 6 })
  ),
  'bare-metal': all(
    () =>
      `<path fill="${TINT.copper}" stroke="currentColor" d="M24 50H136V130q0 16-16 16H40q-16 0-16-16z"/>`,
    () =>
      `<path fill="${TINT.tea}" stroke="currentColor" d="M24 50a56 14 0 0 1 112 0a56 14 0 0 1-112 0z"/>`,
    shape(
      'M36 76q8 6 4 18t6 22q-10-4-11-18t1-22zM112 118q10-6 14-18q4 16-8 30-8-4-6-12z',
      '#6FA58C'
    ),
    stroke('M24 66H136', '#7C4120', 2),
    ink('M24 66h-8q-8 0-8 10v10q0 8 8 8h8M136 66h8q8 0 8 10v10q0 8-8 8h-8'),
    shape('M60 84h5v48h-5z', '#D9946A')
  ),
  'ropy-liquid': all(
    section(below(92, TINT.tea)),
    shape('M58 30C64 60 70 70 66 94H94C90 70 98 60 100 30z', '#E0AE62'),
    stroke('M68 36C72 62 78 72 75 92M84 36Q86 64 82 92M94 36C90 62 88 74 90 92', TINT.teaDeep, 2),
    shape('M66 92q14-8 28 0q-2 8-14 8t-14-8z', '#E0AE62'),
    () =>
      `<path fill="${TINT.metal}" stroke="currentColor" d="M50 22h58q0 20-29 20T50 22zM106 22L148 2"/>`,
    shape('M66 46q1 14 4 24q3-12 1-24z', TINT.white)
  ),
  'oily-sheen': mouth(
    TINT.tea,
    blots([62, 66, 28, 106, 98, 24, 56, 116, 13, 112, 48, 11], '#8E8AA8', 0.12),
    blots([62, 66, 22, 106, 98, 18, 56, 116, 9, 112, 48, 7], '#D7A7A0', 0.12),
    blots([62, 66, 15, 106, 98, 12, 56, 116, 5], '#EBDD9A', 0.12),
    blots([62, 66, 8, 106, 98, 6], '#9CC3B6', 0.12),
    highlight(CENTER, 57, { from: 196, to: 232, width: 6 })
  ),
  'spigot-vessel': all(
    jar(TINT.tea),
    cloth,
    () =>
      `<path fill="${TINT.metal}" stroke="currentColor" d="M66 116h28v10H86v14H74V126H66z"/><path stroke="currentColor" d="M80 116v-9M70 106h20"/>`,
    drop([80, 143], 3, TINT.teaDeep)
  )
}
