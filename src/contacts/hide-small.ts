import { type KeyCounts, type LogReport, tablesOf } from './log-report.ts'

/** A count below this stands for so few people that somebody could be told by it. */
export const LEAST_SHOWN = 5

/** KeyCounts of which some are not shown: null. */
export type ShownCounts = Readonly<Record<string, number | null>>

/** A report for people outside of the office. */
export interface ShownReport
  extends Omit<LogReport, 'contacts' | 'records' | 'minutes' | 'tables'> {
  readonly contacts: number | null
  readonly records: number | null
  readonly minutes: number | null
  readonly tables: Readonly<Record<keyof LogReport['tables'], ShownCounts>>
  /** The least count that is shown; 0 where all are. */
  readonly least: number
}

/** The rows of a table, most first, the hidden ones last. A key of digits alone has no place in an object. */
export const rowsOf = (counts: ShownCounts): readonly (readonly [string, number | null])[] =>
  Object.entries(counts).sort(([a, n], [b, m]) => (m ?? -1) - (n ?? -1) || (a < b ? -1 : 1))

/** Every number as it is, for the office itself. */
export const showAll = (report: LogReport): ShownReport => ({ ...report, least: 0 })

/**
 * Hides the counts from 1 to `least` − 1, and as many of the next smallest that nobody can work out a
 * hidden one from the total: at least two in a table, which come to at least `least` together. Volunteers'
 * hours are given in all, not by their numbers.
 */
export function hideSmall(report: LogReport, least: number = LEAST_SHOWN): ShownReport {
  const few = report.contacts > 0 && report.contacts < least
  const hidden = (counts: KeyCounts): ShownCounts =>
    few
      ? Object.fromEntries(Object.keys(counts).map(key => [key, null]))
      : withHidden(counts, least)
  return {
    ...report,
    contacts: few ? null : report.contacts,
    // As many entries as people, but for events: it would tell what is hidden.
    records: few || report.records < least ? null : report.records,
    minutes: few ? null : report.minutes,
    tables: tablesOf(name => hidden(report.tables[name])),
    volunteers: {},
    least
  }
}

function withHidden(counts: KeyCounts, least: number): ShownCounts {
  const rising = Object.entries(counts)
    .filter(([, count]) => count > 0)
    .sort(([, a], [, b]) => a - b)
  const gone = new Set<string>()
  let together = 0
  for (const [key, count] of rising) {
    if (count >= least && (gone.size === 0 || (gone.size > 1 && together >= least))) break
    gone.add(key)
    together += count
  }
  return Object.fromEntries(
    Object.entries(counts).map(([key, count]) => [key, gone.has(key) ? null : count])
  )
}
