import { type AcidReading, courseBand, progress } from '../../science/course.ts'
import { FINISHED } from '../../science/mix.ts'
import type { Span } from '../../science/span.ts'
import { digits, type Reckoned, type ResultSentence, SOURCES } from './reckoned.ts'

/** The day on which finished kombucha has to be acid enough. */
export const DUE_DAY = 7

/**
 * The band of pH on a day, and where readings lie against it. Without readings it is the band alone; with
 * them it begins at the first, and the day is that of the last.
 *
 * @throws BadInput for numbers that cannot be.
 */
export function reckonCourse(
  start: Span,
  celsius: number,
  day: number,
  readings: readonly AcidReading[] = []
): Reckoned {
  const found = courseBand(start, celsius, day)
  const judged = progress(readings, celsius)
  const last = judged.readings.at(-1)
  const says: ResultSentence[] = [
    // What decides is said first: the rule, wherever a reading breaks it.
    ...late(last),
    found.standing === 'band'
      ? {
          key: 'ui:reckon.course.band',
          values: {
            day,
            low: digits(found.ph.low, 2),
            mid: digits(found.ph.mid, 2),
            high: digits(found.ph.high, 2)
          }
        }
      : { key: 'ui:reckon.course.no-range' },
    ...(last && readings.length > 1
      ? [
          {
            key: `ui:reckon.course.${last.lies}`,
            values: { day: last.day, ph: digits(last.ph.mid, 2) }
          } as const
        ]
      : []),
    { key: 'ui:reckon.course.rule' }
  ]
  return {
    span: found.standing === 'band' ? found.ph : null,
    unit: 'pH',
    says,
    sources: [SOURCES.rates, SOURCES.pKa, SOURCES.finished],
    more: { standing: found.standing, readings: judged.readings }
  }
}

/** A reading on day 7 or later that is not surely at most 4.2: the rule decides, not the band. */
function late(last: AcidReading | undefined): readonly ResultSentence[] {
  if (last === undefined || last.day < DUE_DAY || last.ph.high <= FINISHED) return []
  const over = last.ph.low > FINISHED
  return [{ key: over ? 'ui:reckon.course.over-the-line' : 'ui:reckon.course.near-the-line' }]
}
