import {
  ALL_DAYS,
  calendarYear,
  type DaySpan,
  fiscalYear,
  quarterOf
} from '../contacts/day-span.ts'
import { isDay } from '../office/plain-text.ts'
import { BadUse } from './bad-use.ts'

/** How a time is named on the command line. */
interface NamedSpan {
  readonly quarter?: string | undefined
  readonly 'fiscal-year'?: string | undefined
  readonly year?: string | undefined
  readonly from?: string | undefined
  readonly to?: string | undefined
}

/** The days that the options name; all where they name none. @throws BadUse where they do not fit. */
export function tallySpan(named: NamedSpan): DaySpan {
  const { quarter, year, from, to } = named
  const fiscal = named['fiscal-year']
  const given = [quarter, fiscal, year, from ?? to].filter(one => one !== undefined)
  if (given.length > 1) throw new BadUse('Name one time: a quarter, a year, or days.')
  if (quarter !== undefined) {
    const [, written, number] = /^(\d{4})-?[Qq]?([1-4])$/.exec(quarter) ?? []
    if (written === undefined) throw new BadUse(`\`${quarter}\` is no quarter, like 2026-4.`)
    return quarterOf(yearOf(written), Number(number))
  }
  if (fiscal !== undefined) return fiscalYear(yearOf(fiscal))
  if (year !== undefined) return calendarYear(yearOf(year))
  const span = { from: dayOf(from) ?? ALL_DAYS.from, until: dayOf(to) ?? ALL_DAYS.until }
  if (span.from > span.until) throw new BadUse('`--from` is a later day than `--to`.')
  return span
}

function yearOf(text: string): number {
  if (/^20\d\d$/.test(text)) return Number(text)
  throw new BadUse(`\`${text}\` is no year from 2000 to 2099.`)
}

function dayOf(text: string | undefined): string | undefined {
  if (text === undefined || isDay(text)) return text
  throw new BadUse(`\`${text}\` is no day, like 2026-10-01.`)
}
