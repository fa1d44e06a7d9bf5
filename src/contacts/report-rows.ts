import { csvOf } from '../tables/csv.ts'
import { rowsOf, type ShownReport } from './hide-small.ts'
import { LOG_TABLES, type LogTable } from './log-report.ts'

/** The name of a key of a table, for people. */
export type NameOf = (table: LogTable, key: string) => string

/**
 * A report as rows for a spreadsheet, headed: from, until, table, key, name, people. A hidden number is
 * written `hidden`. Volunteers' minutes follow by their numbers, or in all where those are not told.
 */
export function reportRows(report: ShownReport, nameOf: NameOf): readonly (readonly string[])[] {
  const { from, until } = report
  const shown = (count: number | null) => (count === null ? 'hidden' : String(count))
  const row = (table: string, key: string, name: string, count: number | null) => [
    ...[from, until, table, key, name],
    shown(count)
  ]
  const tables = LOG_TABLES.flatMap(table =>
    rowsOf(report.tables[table]).map(([key, count]) => row(table, key, nameOf(table, key), count))
  )
  return [
    ['from', 'until', 'table', 'key', 'name', 'people'],
    row('all', 'contacts', 'contacts', report.contacts),
    row('all', 'records', 'records', report.records),
    row('all', 'minutes', 'minutes', report.minutes),
    row('all', 'volunteer-minutes', 'volunteer-minutes', report.volunteerMinutes),
    ...tables,
    ...Object.entries(report.volunteers).map(([code, minutes]) =>
      row('volunteer-minutes', code, code, minutes)
    )
  ]
}

/** The same as a CSV file that a spreadsheet opens without running any of it. */
export const reportCsv = (report: ShownReport, nameOf: NameOf): string =>
  csvOf(reportRows(report, nameOf), true)
