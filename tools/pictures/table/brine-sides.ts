import { shreds } from '../foods.ts'
import { canningJar, canningLid } from '../jars.ts'
import { all, ink, type Layer, shape, stroke } from '../layer.ts'
import { band, below, gleam, lidded, section } from '../section.ts'
import { TINT } from '../tints.ts'
import { flecks, uprightsBox } from '../under.ts'
import { bubbles } from '../wet.ts'
import { bulgedLid } from './jars.ts'

/** Cut cabbage packed under brine. */
const packed = (top: number, bottom = 144, more: Parameters<typeof shreds>[2] = {}) =>
  shreds([28, top, 132, bottom], Math.round((bottom - top) / 2.3), more)
const GAS = [
  40, 66, 3, 60, 58, 4, 76, 70, 3, 96, 60, 4, 116, 68, 3, 48, 84, 3, 88, 86, 4, 122, 92, 3, 64, 104,
  3, 106, 110, 3, 40, 118, 3, 82, 124, 3
]
const spurt = all(
  stroke(
    'M42 26Q24 10 16 22M40 32Q20 28 10 42M118 26Q136 10 144 22M120 32Q140 28 150 42',
    TINT.brine,
    4
  ),
  stroke('M14 34h.1M8 56h.1M148 34h.1M152 56h.1M24 8h.1M136 8h.1', TINT.brine, 5)
)
const canned = all(shreds([38, 70, 122, 144], 30))

/** Brine and vegetables from the side. */
export const BRINE_SIDES: Record<string, Layer> = {
  'brine-cloudy': section(
    below(50, TINT.brineClear),
    packed(74, 144, { tint: '#D6D3AC', dark: '#AFA976' }),
    shape('M24 74q8-12 22-6 6-12 22-7 10-12 24-3 12-10 24 1 10-6 20 4V118H24z', '#D5D0B2'),
    shape(
      'M24 98q10-12 24-5 8-12 24-5 10-10 22-2 12-10 22 0 10-6 20 4V134q0 12-12 12H36q-12 0-12-12z',
      '#C3BD9A'
    ),
    shreds([28, 122, 132, 144], 7, { tint: '#CFCAA8', dark: '#AFA985' }),
    gleam(51)
  ),
  'brine-sediment': section(
    below(50, TINT.brineClear),
    packed(66, 128),
    shape('M26 132Q50 124 80 129T134 131Q134 144.8 124 144.8H36Q26 144.8 26 132z', TINT.white),
    stroke('M26 132Q50 124 80 129T134 131', TINT.shade, 2),
    flecks(20, '#B5AA7C', { at: [80, 138], r: 44, squash: 0.1, size: 2 }),
    gleam(51)
  ),
  'brine-pink-even': section(
    below(50, '#E7A3AE'),
    uprightsBox(25, 51, 135, 144, '#B9546C', 5),
    packed(86, 144, { tint: '#F2CBCF', dark: '#B9546C' }),
    gleam(51)
  ),
  'brine-slime': all(
    section(below(88, TINT.brine), packed(100)),
    shape('M60 34Q66 66 62 92H98Q94 66 98 34z', '#DCD3A0'),
    stroke('M68 38Q73 66 70 92M80 38V92M91 38Q86 66 90 92', '#8B8146', 2),
    () =>
      `<path fill="${TINT.metal}" stroke="currentColor" d="M50 24h58q0 18-29 18T50 24zM106 24L150 6"/>`,
    shape('M62 48q2 12 1 26q5-12 3-26z', TINT.white)
  ),
  'brine-dark-top': section(
    below(56, TINT.brineClear),
    packed(92),
    packed(60, 92, { tint: '#8A6A3A', dark: '#4E3A1C' }),
    gleam(57)
  ),
  'brine-gray-through': section(
    below(50, '#B5AE9A'),
    packed(64, 144, { tint: '#A39C8A', dark: '#5C5648' }),
    gleam(51)
  ),
  'food-above-brine': section(
    below(92, TINT.brineClear),
    packed(96),
    packed(52, 100, { tint: '#D9CC98', dark: '#857741' }),
    stroke('M25 92H60M104 92H135', TINT.leafDark, 2),
    gleam(93, 30, 62)
  ),
  'lid-domed': lidded(
    bulgedLid,
    below(56, TINT.brineClear),
    packed(72),
    bubbles(GAS.slice(0, 24), TINT.white, '#8B8146')
  ),
  'canned-lid-bulging': all(
    canningJar(TINT.brineClear, canned),
    canningLid(13),
    ink('M34 18l-10-6M126 18l10-6M44 6l-6-5M116 6l6-5')
  ),
  'canned-spurting': all(spurt, canningJar(TINT.brineClear, canned), canningLid(4)),
  'oil-layer': section(
    below(76, TINT.brineClear),
    packed(82),
    band(48, 76, TINT.oil),
    stroke('M25 76H135', '#9A7C12', 2),
    bubbles([46, 68, 4, 92, 66, 5, 118, 69, 3], '#F4DC7C', '#9A7C12'),
    gleam(49, 34, 92, 5)
  ),
  'cucumber-soft': all(
    stroke('M6 150L92 64', TINT.metalDark, 7),
    stroke('M86 70L118 38M94 62L112 32M86 70L124 52', TINT.metalDark, 4),
    () =>
      `<path fill="${TINT.cucumber}" stroke="currentColor" d="M20 118Q10 76 36 52T92 36 140 64 148 122Q140 138 126 128 120 104 112 88T84 68 54 86 48 118Q44 136 32 134T20 118z"/>`,
    stroke('M52 62q6 4 8 10M74 48q2 6 0 14M104 52q-4 6-8 16M120 72q-6 4-10 8', '#4E5C28', 2),
    shape('M28 92Q32 66 54 54Q38 72 36 94zM100 44q14 4 22 14q-12-6-22-8z', TINT.white),
    stroke('M34 140v6M134 138v8M26 142v4', TINT.leafDark, 3)
  ),
  'cucumber-hollow': all(
    () =>
      `<path fill="${TINT.cucumber}" stroke="currentColor" d="M6 82Q10 50 60 48T148 66Q158 76 152 92 140 114 84 114T6 82z"/>`,
    shape('M14 82Q20 58 62 56T144 72Q148 80 144 88 132 106 84 106T14 82z', TINT.cucumberPale),
    shape('M38 82Q50 70 80 72T124 76Q130 82 122 88 100 92 80 93T38 82z', '#4A5226'),
    stroke(
      'M34 70l6 3M50 64l6 4M68 62l4 5M88 62l2 6M106 64l-1 6M122 68l-4 5M36 94l6-3M54 99l5-4M74 101l3-5M94 101v-5M112 98l-3-5M128 92l-5-3',
      TINT.leafDark,
      3
    )
  ),
  'cucumber-shriveled': all(
    () =>
      `<path fill="${TINT.cucumber}" stroke="currentColor" d="M18 84Q22 62 42 66 56 58 72 66 90 58 104 66 120 58 132 70 146 76 142 90 136 102 120 98 106 108 92 98 76 108 60 98 44 106 32 98 18 98 18 84z"/>`,
    stroke(
      'M36 74q8 8 6 18M54 70q-4 12 4 22M74 74q8 8 4 18M94 70q-6 12 4 22M114 72q6 10-2 20M128 78q-4 6 0 12',
      '#3E4A1E',
      2.5
    )
  )
}
