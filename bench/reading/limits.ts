import type { Reading } from './measure.ts'

/** A goal that every reading it is about must keep. */
export interface Limit {
  readonly what: string
  readonly most: number
  /** Left out: every caller. */
  readonly caller?: string
  /** Left out: every place. */
  readonly places?: readonly string[]
  readonly of: (reading: Reading) => number
}

/** A number above its goal. */
export interface Breach {
  readonly caller: string
  readonly place: string
  readonly language: string
  readonly what: string
  readonly number: number
  readonly most: number
}

const ON_A_PHONE = ['page', 'embed']
const BY_ONESELF = ['page', 'kiosk', 'embed']
const GENTLE = 'white-film-day-4'
const FUZZ = 'fuzz'

/** The goals, one a line. */
export const LIMITS: readonly Limit[] = [
  { what: 'words to the verdict', caller: GENTLE, places: BY_ONESELF, most: 700, of: toVerdict },
  { what: 'screens to the verdict', caller: GENTLE, places: ON_A_PHONE, most: 12, of: screens },
  { what: 'words to the verdict', caller: FUZZ, places: BY_ONESELF, most: 350, of: toVerdict },
  { what: 'screens to the verdict', caller: FUZZ, places: ON_A_PHONE, most: 5, of: screens },
  { what: 'words read aloud', places: ['desk'], most: 350, of: aloud },
  { what: 'keys', places: ['desk'], most: 9, of: ({ presses }) => presses },
  { what: 'words of the outcome in sight', most: 130, of: ({ outcome }) => outcome.inSight }
]

/** Of everything asked of the callers of one place, what could change nothing: at most this share, in percent. */
export const MOST_NEEDLESS = 10

function toVerdict(reading: Reading) {
  return reading.toVerdict
}

function screens(reading: Reading) {
  return reading.screens
}

/** What is read to a caller: questions with the names of their answers, and the outcome up to its steps. */
export function aloud({ aloud }: Reading) {
  return aloud.asked + aloud.card
}

/** Whether a limit is about a reading. */
export const isAbout = (
  { caller, places }: Pick<Limit, 'caller' | 'places'>,
  reading: Pick<Reading, 'caller' | 'place'>
): boolean =>
  (caller === undefined || caller === reading.caller) &&
  (places === undefined || places.includes(reading.place))

/** The share of questions that could change nothing, in percent to a tenth. */
export function needlessShare(readings: readonly Reading[]): number {
  const asked = readings.flatMap(reading => reading.asked).length
  const needless = readings.flatMap(reading => reading.needless).length
  return asked === 0 ? 0 : Math.round((1000 * needless) / asked) / 10
}

/** Every number above its goal, by goal and then in the order of the readings. */
export function breachesOf(readings: readonly Reading[]): readonly Breach[] {
  const single = LIMITS.flatMap(limit =>
    readings
      .filter(reading => isAbout(limit, reading) && limit.of(reading) > limit.most)
      .map(reading => ({
        caller: reading.caller,
        place: reading.place,
        language: reading.language,
        what: limit.what,
        number: limit.of(reading),
        most: limit.most
      }))
  )
  const walks = new Set(readings.map(({ place, language }) => `${place} ${language}`))
  const shares = [...walks].flatMap(walk => {
    const [place = '', language = ''] = walk.split(' ')
    const number = needlessShare(
      readings.filter(each => each.place === place && each.language === language)
    )
    const breach = { caller: 'all callers', place, language, what: '% needless questions', number }
    return number > MOST_NEEDLESS ? [{ ...breach, most: MOST_NEEDLESS }] : []
  })
  return [...single, ...shares]
}
