import { all, filled, inked, type Layer } from './layer.ts'
import { numbers } from './line.ts'
import { TINT } from './tints.ts'

/** A bottle's outline by its half widths and heights. */
export interface Bottle {
  readonly neck: number
  readonly top: number
  readonly neckEnd: number
  readonly body: number
  readonly shoulder: number
  readonly foot: number
  /** 0: shoulders that slope; 1: shoulders that stand square. */
  readonly square: number
}

const X = 80

/** The line of a bottle from its lip, or from a level in it, round its foot. */
export function bottleLine(bottle: Bottle, level = bottle.top): string {
  const { neck, neckEnd, body, shoulder, foot, square } = bottle
  const fall = shoulder - neckEnd
  const bend = (1 - square) * 0.55
  const left = `M${numbers(X - neck, level)}V${numbers(neckEnd)}C${numbers(X - neck, neckEnd + fall * bend, X - body, neckEnd + fall * 0.4 * (1 - square), X - body, shoulder)}`
  const base = `V${numbers(foot - 8)}q0 8 8 8H${numbers(X + body - 8)}q8 0 8-8V${numbers(shoulder)}`
  return `${left}${base}C${numbers(X + body, neckEnd + fall * 0.4 * (1 - square), X + neck, neckEnd + fall * bend, X + neck, neckEnd)}V${numbers(level)}`
}

/** A whole bottle from the side with what is in it up to a level. */
export const bottle =
  (form: Bottle, tint: string, level: number, ...layers: readonly Layer[]): Layer =>
  chance =>
    filled(`${bottleLine(form)}z`, TINT.glass) +
    filled(`${bottleLine(form, level)}z`, tint) +
    all(...layers)(chance) +
    inked(`${bottleLine(form)}z`)

/** Forms of bottles. */
export const FORM = {
  swing: { neck: 12, top: 32, neckEnd: 58, body: 30, shoulder: 88, foot: 150, square: 0 },
  beer: { neck: 10, top: 22, neckEnd: 54, body: 27, shoulder: 86, foot: 150, square: 0 },
  plastic: { neck: 13, top: 26, neckEnd: 34, body: 30, shoulder: 66, foot: 148, square: 0 },
  sparkling: { neck: 10, top: 30, neckEnd: 50, body: 32, shoulder: 104, foot: 151, square: 0 },
  square: { neck: 12, top: 28, neckEnd: 50, body: 34, shoulder: 60, foot: 150, square: 0.9 },
  wine: { neck: 9, top: 18, neckEnd: 60, body: 27, shoulder: 76, foot: 151, square: 0.35 },
  store: { neck: 22, top: 26, neckEnd: 58, body: 34, shoulder: 80, foot: 150, square: 0.2 },
  canning: { neck: 34, top: 34, neckEnd: 42, body: 42, shoulder: 56, foot: 148, square: 0.5 }
} as const satisfies Record<string, Bottle>

const CROP = 'M52 20V78C52 102 16 100 16 132V154'

/** The neck and shoulders of a bottle, near enough to see what is in the neck. */
export const neck =
  (tint: string, level: number, ...layers: readonly Layer[]): Layer =>
  chance =>
    filled('M52 20V78C52 102 16 100 16 132V154H144V132C144 100 108 102 108 78V20z', TINT.air) +
    filled(
      `M52 ${level}V78C52 102 16 100 16 132V154H144V132C144 100 108 102 108 78V${level}z`,
      tint
    ) +
    all(...layers)(chance) +
    inked(`${CROP}M108 20V78C108 102 144 100 144 132V154M46 10H114V20H46z`)

/** The wire and stopper of a swing-top, shut. */
export const swingTop: Layer = () =>
  `<path fill="${TINT.cream}" stroke="currentColor" d="M69 32q-2-14 11-14t11 14z"/>` +
  filled('M67 31h26v5H67z', TINT.red) +
  inked('M64 50h32M66 50V26q0-12 14-12t14 12V50')
