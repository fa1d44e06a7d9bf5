import { shredsRound, slice } from '../foods.ts'
import { MOLD, powder, tuft } from '../hair.ts'
import { all, type Layer, round, shape } from '../layer.ts'
import { type Point, spotsOf } from '../line.ts'
import { mouth } from '../mouth.ts'
import { folds, tear } from '../skin.ts'
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
    blots([x, y, r + 2], TINT.pinkDark, 0.14),
    blots([x, y, r], TINT.pink, 0.14),
    uprightsIn([x, y], r - 1, TINT.pinkDark)
  )

/** A clove of garlic, smooth and wet, blue all through or at its root. */
const clove =
  ([x, y]: Point, turn: number, blue: boolean): Layer =>
  () => {
    const line = 'M-9 20Q-22 6-12-10T6-30Q8-20 14-8T10 18Q2 24-9 20z'
    const tint = blue ? TINT.blue : '#F3EBD2'
    return `<g transform="translate(${x} ${y})rotate(${Math.round(turn * 57)})"><path fill="${tint}" stroke="${blue ? TINT.blueDark : TINT.shade}" stroke-width="2" d="${line}M4-22Q-6-2 2 20"/>${
      blue
        ? ''
        : `<path fill="${TINT.blue}" d="M-9 18Q-16 10-15 3Q-2 12 12 4Q14 12 10 17 2 22-9 18z"/>`
    }<path fill="${TINT.white}" d="M-12-2Q-9-11-3-15Q-8-7-9 0z"/></g>`
  }

/** A cabbage leaf under brine: fine dark dots inside its rib and along its veins, under the skin. */
const leafWithSpecks: Layer = () => {
  const leaf = 'M80 24Q128 40 130 84 126 124 80 138 34 124 30 84 32 40 80 24z'
  const rib = 'M74 136Q72 84 79 30H82Q90 84 88 136z'
  const veins = 'M76 108Q58 98 42 98M76 82Q58 70 44 66M86 108Q104 98 118 98M86 82Q104 70 116 66'
  const dots = spotsOf([
    80, 124, 1.9, 78, 114, 1.6, 83, 106, 2, 79, 97, 1.7, 84, 90, 1.5, 80, 81, 1.9, 83, 72, 1.6, 80,
    62, 1.7, 82, 52, 1.4, 66, 101, 1.5, 56, 98, 1.3, 64, 75, 1.5, 54, 69, 1.3, 96, 102, 1.5, 106,
    98, 1.3, 97, 75, 1.5, 108, 69, 1.3
  ])
  const specks = dots.map(([x, y, r]) => `<circle cx="${x}" cy="${y}" r="${r}"/>`).join('')
  return `<path fill="${TINT.leaf}" stroke="${TINT.leafDark}" d="${leaf}"/><path fill="${TINT.white}" stroke="${TINT.leafDark}" stroke-width="1.5" d="${rib}"/><path stroke="${TINT.leafDark}" stroke-width="2" d="${veins}"/><g fill="#4A3A22">${specks}</g>`
}

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
    powder([62, 64], 28, { count: 170, patch: '#DFD8AC' }),
    powder([102, 98], 24, { count: 140, patch: '#DFD8AC' })
  ),
  'brine-dark-centers': vegetables(
    ...spotsOf([56, 58, 19, 106, 74, 17, 66, 108, 15, 108, 116, 11]).map(([x, y, r]) =>
      tuft([x, y], r + 2, MOLD.centers)
    )
  ),
  'brine-flat-film': vegetables(
    shape(round(CENTER, 66), '#DDD5B0'),
    folds({ gap: 15, width: 4.5, turn: -0.5, skin: { lit: '#F0EAD2', dark: '#AFA473' } }),
    tear(TINT.brine, 52, { depth: 26, spread: 40 }),
    tear(TINT.brine, 215, { depth: 18, spread: 26 })
  ),
  'brine-thick-film': mouth(
    TINT.brine,
    shape(round(CENTER, 66), '#DCCB9C'),
    folds({ gap: 11, width: 10, turn: 0.5 })
  ),
  'brine-foam': vegetables(
    bubbles(
      [
        52, 62, 13, 74, 50, 10, 70, 74, 14, 94, 62, 12, 48, 86, 10, 92, 88, 13, 112, 78, 9, 70, 98,
        10, 112, 100, 8, 54, 106, 7, 92, 110, 8, 108, 52, 7, 36, 70, 6, 82, 32, 6, 76, 118, 6
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
        56, 60, 5, 80, 50, 4, 100, 66, 6, 64, 90, 4, 88, 84, 5, 114, 92, 4, 72, 116, 6, 100, 112, 4,
        48, 110, 4, 120, 62, 3
      ],
      TINT.white,
      '#8B8146'
    ),
    LIGHT
  ),
  'brine-color-spots': vegetables(
    blots([56, 60, 18, 64, 112, 12], '#8E5A1D', 0.12),
    blots([56, 60, 16, 64, 112, 10], TINT.orange, 0.12),
    uprightsIn([56, 60], 14, TINT.orangeDark),
    blots([104, 92, 21], '#8F7A10', 0.12),
    blots([104, 92, 19], '#F0D23C', 0.12),
    blots([110, 46, 10], TINT.pinkDark, 0.12),
    uprightsIn([110, 46], 9, '#7C2238', 3)
  ),
  'brine-pink-patches': vegetables(pink(58, 62, 20), pink(106, 90, 18), pink(62, 114, 11)),
  'brine-metallic-green': mouth(
    '#BFD3B4',
    ...spotsOf([56, 60, 22, 104, 84, 25, 60, 112, 17]).flatMap(([x, y, r]) => [
      blots([x, y, r], '#1E5E52', 0.04),
      blots([x, y, r - 3], '#46A98F', 0.04),
      blots([x, y, r - 9], '#8FD3B8', 0.08)
    ]),
    LIGHT
  ),
  'specks-in-rib': mouth(TINT.brineClear, leafWithSpecks, LIGHT),
  'garlic-blue': mouth(
    TINT.brineClear,
    clove([54, 62], -0.5, true),
    clove([98, 52], 0.4, false),
    clove([110, 98], 1.3, true),
    clove([64, 112], -1.2, false),
    LIGHT
  )
}
