import { checked } from './bad-input.ts'
import { exactly, type Span } from './span.ts'
import { acidAt, phWith, type Tea } from './tea.ts'

/** The pH of one day that lies within what is published: `low` the fast edge, `high` the slow one. */
export type CourseBand =
  | { readonly standing: 'band'; readonly ph: Span }
  | { readonly standing: 'no-published-range' }

export interface AcidReading {
  /** Whole days since sweet tea was last added. */
  readonly day: number
  readonly ph: Span
}

/** Where a reading lies: all of it inside, all of it above or below, or across an edge. */
export type Lies = 'inside' | 'slower' | 'faster' | 'not-known' | 'no-published-range'

export interface CourseProgress {
  readonly readings: readonly (AcidReading & { readonly lies: Lies; readonly band: Span | null })[]
  /** How far the last reading lies above the slow edge, in pH; null where nothing is published. */
  readonly aboveSlowEdge: Span | null
}

/** What is published covers these alone; outside nothing is drawn. */
export const COURSE_RANGE = {
  celsius: { from: 20, to: 30, unit: '°C' },
  day: { from: 2, to: 21, unit: 'days' },
  start: { from: 3.4, to: 5, unit: 'pH' }
} as const

interface Curve {
  /** mol/L of acid a day at 25 °C. */
  readonly rate: number
  readonly lag: number
  /** How much faster ten degrees make it, below and above 25 °C. */
  readonly below: number
  readonly above: number
  readonly tea: Tea
}

/**
 * Acid a day: 5.5 to 8 mmol/L in four published series (Chen and Liu 2000, Sievers 1995, KJFP 31(4), Chong
 * 2024), up to 17 where the start is not known. How temperature, lag and buffer act are assumptions, not
 * fitted. All 15 published tea points lie inside; several of them stand behind the fast edge themselves.
 */
const CURVES = {
  slow: curve(4e-3, 2, 2.5, 1.3, 0.85, 3e-3, 6.2),
  expected: curve(6.5e-3, 0, 2, 2, 0.7, 2e-3, 5.6),
  fast: curve(16e-3, 0, 1.3, 3, 0.5, 0.8e-3, 4.9)
} as const

function curve(
  rate: number,
  lag: number,
  below: number,
  above: number,
  acetic: number,
  capacity: number,
  neutral: number
): Curve {
  return { rate, lag, below, above, tea: { acetic, buffer: { capacity, neutral } } }
}

function phOn(
  { rate, lag, below, above, tea }: Curve,
  start: number,
  celsius: number,
  day: number
) {
  const faster = (celsius < 25 ? below : above) ** ((celsius - 25) / 10)
  const acid = rate * faster * Math.max(0, day - lag)
  return phWith(tea, acidAt(tea, start) + acid)
}

/**
 * The band of pH on a day (2 to 21) of a tea ferment at 20 to 30 °C that started at pH 3.4 to 5.0. For
 * caution alone: a pH inside it proves nothing. Outside of these there is no published range.
 *
 * @throws BadInput for numbers that cannot be at all: pH outside 0 to 14, a day below 0, −50 to 100 °C.
 */
export function courseBand(start: Span, celsius: number, day: number): CourseBand {
  for (const value of [start.low, start.mid, start.high]) {
    checked('start-ph', value, { from: 0, to: 14, unit: 'pH' })
  }
  checked('temperature', celsius, { from: -50, to: 100, unit: '°C' })
  checked('day', day, { from: 0, to: 3650, unit: 'days' })
  const covered =
    within(celsius, COURSE_RANGE.celsius) &&
    within(day, COURSE_RANGE.day) &&
    within(start.mid, COURSE_RANGE.start)
  if (!covered) return { standing: 'no-published-range' }
  return {
    standing: 'band',
    ph: {
      low: phOn(CURVES.fast, start.low, celsius, day),
      mid: phOn(CURVES.expected, start.mid, celsius, day),
      high: phOn(CURVES.slow, start.high, celsius, day)
    }
  }
}

/**
 * Where the readings of one batch lie against the band that begins at the first of them.
 * @throws BadInput as `courseBand`.
 */
export function progress(readings: readonly AcidReading[], celsius: number): CourseProgress {
  const inOrder = [...readings].sort((a, b) => a.day - b.day)
  const [first] = inOrder
  if (first === undefined) return { readings: [], aboveSlowEdge: null }
  const judged = inOrder.map(reading => {
    const found = courseBand(first.ph, celsius, reading.day - first.day)
    return found.standing === 'band'
      ? { ...reading, band: found.ph, lies: lies(reading.ph, found.ph) }
      : { ...reading, band: null, lies: found.standing }
  })
  const last = judged.at(-1)
  return {
    readings: judged,
    aboveSlowEdge: last?.band ? lessEach(last.ph, last.band.high) : null
  }
}

function lies(ph: Span, band: Span): Lies {
  if (ph.low > band.high) return 'slower'
  if (ph.high < band.low) return 'faster'
  return ph.low >= band.low && ph.high <= band.high ? 'inside' : 'not-known'
}

const lessEach = ({ low, mid, high }: Span, less: number): Span => ({
  low: low - less,
  mid: mid - less,
  high: high - less
})

const within = (value: number, { from, to }: { from: number; to: number }): boolean =>
  value >= from && value <= to

/** A start that somebody read, or the 4.5 that most recipes aim at (common practice, no source). */
export const USUAL_START: Span = exactly(4.5)
