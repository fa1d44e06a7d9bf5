import { fahrenheitOf, MONTH, WEEK, YEAR } from '../science/units.ts'
import type { Unit } from '../tree/observation.ts'
import { rounded } from '../tree/reading.ts'
import { baseOf } from './lexicon.ts'

/** A unit as people say it, and how it turns into the measure's own. */
export interface SpokenUnit {
  /** The measure's own unit. */
  readonly unit: Unit
  readonly toMeasure: (spoken: number) => number
  /** The same without rounding: a count of days is whole, a time is not. */
  readonly exactly: (spoken: number) => number
  /** Whether "week 2" may be read as "2 weeks": of a day that is so, of a week it is not. */
  readonly standsFirst: boolean
}

/** A time, in so many days each. */
const time = (each: number, standsFirst = false): SpokenUnit => ({
  unit: 'day',
  toMeasure: x => Math.floor(rounded(x * each)),
  exactly: x => rounded(x * each),
  standsFirst
})
const plain = (
  unit: Unit,
  standsFirst = false,
  exactly: SpokenUnit['exactly'] = x => x
): SpokenUnit => ({ unit, toMeasure: exactly, exactly, standsFirst })

const DAYS = time(1, true)
const WEEKS = time(WEEK)
const MONTHS = time(MONTH)
const YEARS = time(YEAR)
const HOURS = time(1 / 24)
const PH = plain('ph', true)
const PERCENT = plain('percent')
const FAHRENHEIT = plain('fahrenheit')
const CELSIUS = plain('fahrenheit', false, fahrenheitOf)

const SPOKEN: readonly (readonly [string, SpokenUnit])[] = [
  ['day days d día días dia', DAYS],
  ['week weeks wk wks semana semanas', WEEKS],
  ['month months mes meses', MONTHS],
  ['year years yr yrs año años', YEARS],
  ['hour hours hr hrs h hora horas', HOURS],
  ['ph', PH],
  ['% percent pct', PERCENT],
  ['f fahrenheit', FAHRENHEIT],
  ['c celsius centigrade centígrados centigrado', CELSIUS]
]

/** Units by the word that names them, as tokens have it. */
export const UNIT_WORDS: ReadonlyMap<string, SpokenUnit> = new Map(
  SPOKEN.flatMap(([words, unit]) =>
    words.split(' ').map(word => [baseOf(word.normalize('NFD').replace(/\p{M}/gu, '')), unit])
  )
)

/** How long somebody is with child is said in these: "6 months pregnant". */
export const carryingUnit = (word: string): boolean => {
  const unit = UNIT_WORDS.get(word)
  return unit === WEEKS || unit === MONTHS
}

/** "Degrees" alone: Fahrenheit in the US, and Celsius where that can be. */
export const DEGREE_WORDS: ReadonlySet<string> = new Set([
  '°',
  ...['degree', 'deg', 'grado'].map(baseOf)
])
export const DEGREE_UNITS: readonly SpokenUnit[] = [FAHRENHEIT, CELSIUS]

const OWN: Partial<Record<Unit, readonly SpokenUnit[]>> = {
  fahrenheit: DEGREE_UNITS,
  day: [DAYS],
  ph: [PH],
  percent: [PERCENT]
}

/** A reading that is already in the measure's own unit; amounts are typed in fields of their own. */
export const ownUnit = (unit: Unit): readonly SpokenUnit[] => OWN[unit] ?? []
