import type { Unit } from '../../tree/observation.ts'
import { singular } from './lexicon.ts'

/** A unit as people say it, and how it turns into the measure's own. */
export interface SpokenUnit {
  /** The measure's own unit. */
  readonly unit: Unit
  readonly toMeasure: (spoken: number) => number
  /** Whether "week 2" may be read as "2 weeks": of a day that is so, of a week it is not. */
  readonly standsFirst: boolean
}

const days =
  (each: number): SpokenUnit['toMeasure'] =>
  x =>
    Math.floor(rounded(x * each))
const rounded = (x: number): number => Math.round(x * 1e6) / 1e6
const same = (x: number): number => x

const DAYS: SpokenUnit = { unit: 'day', toMeasure: days(1), standsFirst: true }
const WEEKS: SpokenUnit = { unit: 'day', toMeasure: days(7), standsFirst: false }
const HOURS: SpokenUnit = { unit: 'day', toMeasure: days(1 / 24), standsFirst: false }
const PH: SpokenUnit = { unit: 'ph', toMeasure: same, standsFirst: true }
const PERCENT: SpokenUnit = { unit: 'percent', toMeasure: same, standsFirst: false }
const FAHRENHEIT: SpokenUnit = { unit: 'fahrenheit', toMeasure: same, standsFirst: false }
const CELSIUS: SpokenUnit = {
  unit: 'fahrenheit',
  // Exact by definition: 0 °C is 32 °F and a kelvin is 1.8 degrees Fahrenheit (NIST SP 811).
  toMeasure: x => Math.round((x * 1.8 + 32) * 10) / 10,
  standsFirst: false
}

const SPOKEN: readonly (readonly [string, SpokenUnit])[] = [
  ['day days d día días dia', DAYS],
  ['week weeks wk wks semana semanas', WEEKS],
  ['hour hours hr hrs h hora horas', HOURS],
  ['ph', PH],
  ['% percent pct', PERCENT],
  ['f fahrenheit', FAHRENHEIT],
  ['c celsius centigrade centígrados centigrado', CELSIUS]
]

/** Units by the word that names them, as tokens have it. */
export const UNIT_WORDS: ReadonlyMap<string, SpokenUnit> = new Map(
  SPOKEN.flatMap(([words, unit]) =>
    words.split(' ').map(word => [singular(word.normalize('NFD').replace(/\p{M}/gu, '')), unit])
  )
)

/** "Degrees" alone: Fahrenheit in the US, and Celsius where that can be. */
export const DEGREE_WORDS: ReadonlySet<string> = new Set(['°', 'degree', 'deg', 'grado'])
export const DEGREE_UNITS: readonly SpokenUnit[] = [FAHRENHEIT, CELSIUS]

const OWN: Partial<Record<Unit, readonly SpokenUnit[]>> = {
  fahrenheit: DEGREE_UNITS,
  day: [DAYS],
  ph: [PH],
  percent: [PERCENT]
}

/** A reading that is already in the measure's own unit; amounts are typed in fields of their own. */
export const ownUnit = (unit: Unit): readonly SpokenUnit[] => OWN[unit] ?? []
