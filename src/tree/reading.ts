import type { Interval } from './answers.ts'
import type { MeasureObservation } from './observation.ts'

/**
 * A reading as the interval that it can truly be: reading ± the instrument's uncertainty, in the
 * measure's unit; no instrument named: the widest; a count is exact.
 *
 * @throws RangeError when the reading lies outside the measure's span, or the instrument is unknown.
 */
export function measured(
  measure: MeasureObservation,
  value: number,
  instrument?: string
): Interval {
  const { from, to } = measure.span
  if (!(value >= from && value <= to)) {
    throw new RangeError(`${measure.id} lies between ${from} and ${to}`)
  }
  const used = measure.instruments.find(({ id }) => id === instrument)
  if (instrument !== undefined && used === undefined) {
    throw new RangeError(`${measure.id} is not measured with ${instrument}`)
  }
  const widest = Math.max(0, ...measure.instruments.map(({ plusMinus }) => plusMinus))
  const plusMinus = used?.plusMinus ?? widest
  // INVARIANT: low ≤ reading ≤ high, since no instrument is out by less than nothing.
  return {
    low: rounded(value - plusMinus),
    reading: value,
    high: rounded(value + plusMinus),
    ...(instrument !== undefined && { instrument })
  }
}

/** Floating point must not decide a limit: 4.15 + 0.05 is 4.2. */
export function rounded(x: number): number {
  return Math.round(x * 1e6) / 1e6
}
