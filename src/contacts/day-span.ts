import { DAY_MS } from '../science/days.ts'

/** Whole days of the office's calendar, both ends included, each as YYYY-MM-DD. */
export interface DaySpan {
  readonly from: string
  readonly until: string
}

const pad = (number: number): string => String(number).padStart(2, '0')

/** January 1 to December 31. */
export const calendarYear = (year: number): DaySpan => ({
  from: `${year}-01-01`,
  until: `${year}-12-31`
})

/**
 * The fiscal year of the United States, named by the year in which it ends: October 1 of the year before
 * to September 30 (31 U.S.C. 1102).
 */
export const fiscalYear = (year: number): DaySpan => ({
  from: `${year - 1}-10-01`,
  until: `${year}-09-30`
})

const LAST_DAYS = ['03-31', '06-30', '09-30', '12-31'] as const

/** Three months of a calendar year; `quarter` from 1 to 4. @throws RangeError for any other. */
export function quarterOf(year: number, quarter: number): DaySpan {
  const last = LAST_DAYS[quarter - 1]
  if (last === undefined) throw new RangeError(`There is no quarter ${quarter}.`)
  return { from: `${year}-${pad(quarter * 3 - 2)}-01`, until: `${year}-${last}` }
}

/** The calendar quarter that a day lies in. */
export const quarterAt = (day: string): { readonly year: number; readonly quarter: number } => ({
  year: Number(day.slice(0, 4)),
  quarter: Math.ceil(Number(day.slice(5, 7)) / 3)
})

/** The federal fiscal year that a day lies in. */
export const fiscalYearAt = (day: string): number =>
  Number(day.slice(0, 4)) + (day.slice(5) >= '10-01' ? 1 : 0)

/** Whether a day lies in a span. */
export const isIn = ({ from, until }: DaySpan, day: string): boolean => from <= day && day <= until

/** Every day there can be in a log. */
export const ALL_DAYS: DaySpan = { from: '2000-01-01', until: '2099-12-31' }

/** The day that lies so many days later, or earlier. */
export const dayAfter = (day: string, days: number): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) + days * DAY_MS).toISOString().slice(0, 10)

/** The first day of the month that lies so many months before a day's own. */
export function monthsBefore(day: string, months: number): string {
  const first = new Date(`${day.slice(0, 7)}-01T00:00:00Z`)
  first.setUTCMonth(first.getUTCMonth() - months)
  return first.toISOString().slice(0, 10)
}

/** The first and the last day of a month, `YYYY-MM`. */
export const monthSpan = (month: string): DaySpan => ({
  from: `${month}-01`,
  until: dayAfter(monthsBefore(`${month}-01`, -1), -1)
})
