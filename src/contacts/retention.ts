import type { LogEntry } from './contact.ts'
import { monthSpan, monthsBefore } from './day-span.ts'
import { type LogReport, reportOnLog } from './log-report.ts'
import { latestOf, type MergedLog } from './merge.ts'

/** The first day of which single records are kept; null where all are. */
export const keptFrom = (today: string, keepMonths: number | null): string | null =>
  keepMonths === null ? null : monthsBefore(today, keepMonths)

/** A month whose records are gone. */
export interface MonthSum {
  /** YYYY-MM */
  readonly month: string
  readonly report: LogReport
}

/**
 * What becomes of entries whose time is over: the sums of their months, added to those that stand there
 * already, and the ids to delete. A month goes whole.
 */
export function foldAway(
  log: MergedLog,
  before: string,
  standing: readonly MonthSum[]
): { readonly sums: readonly MonthSum[]; readonly gone: readonly string[] } {
  const old = latestOf(log).filter(({ date }) => date < before)
  const byMonth = new Map<string, LogEntry[]>()
  for (const entry of old) {
    const month = entry.date.slice(0, 7)
    const before = byMonth.get(month)
    if (before === undefined) byMonth.set(month, [entry])
    else before.push(entry)
  }
  const sums = [...byMonth].map(([month, entries]) => ({
    month,
    report: reportOnLog(
      entries,
      monthSpan(month),
      standing.flatMap(sum => (sum.month === month ? [sum.report] : []))
    )
  }))
  return { sums, gone: old.map(({ id }) => id) }
}
