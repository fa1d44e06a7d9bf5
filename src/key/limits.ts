import type { MeasureObservation, Range } from '../tree/observation.ts'
import { rounded } from '../tree/reading.ts'

/** A range as read off one instrument; the whole width of the reading lies within the range. */
export interface RangeLimits {
  /** Null for a count, which is exact, and where nobody knows the instrument: then the widest counts. */
  readonly instrument: string | null
  readonly range: Range
}

/** The limits of a range by instrument: each is moved in by half the width of its readings. */
export function limitsOf(observation: MeasureObservation, range: Range): readonly RangeLimits[] {
  if (observation.instruments.length === 0) return [{ instrument: null, range }]
  const widest = Math.max(...observation.instruments.map(({ plusMinus }) => plusMinus))
  return [
    ...observation.instruments.map(({ id, plusMinus }) => ({
      instrument: id,
      range: movedIn(range, plusMinus)
    })),
    { instrument: null, range: movedIn(range, widest) }
  ]
}

function movedIn({ atLeast, over, under, atMost }: Range, by: number): Range {
  return {
    ...(atLeast !== undefined && { atLeast: rounded(atLeast + by) }),
    ...(over !== undefined && { over: rounded(over + by) }),
    ...(under !== undefined && { under: rounded(under - by) }),
    ...(atMost !== undefined && { atMost: rounded(atMost - by) })
  }
}
