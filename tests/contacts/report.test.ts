import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Contact } from '../../src/contacts/contact.ts'
import {
  ALL_DAYS,
  calendarYear,
  fiscalYear,
  fiscalYearAt,
  monthSpan,
  monthsBefore,
  quarterAt,
  quarterOf
} from '../../src/contacts/day-span.ts'
import { hideSmall, showAll } from '../../src/contacts/hide-small.ts'
import { LOG_TABLES, reportOnLog } from '../../src/contacts/log-report.ts'
import { mergeLogs } from '../../src/contacts/merge.ts'
import { reportCsv, reportRows } from '../../src/contacts/report-rows.ts'
import { foldAway, keptFrom } from '../../src/contacts/retention.ts'
import { localTime } from '../../src/office/hours.ts'
import { CALL, contacts, HOURS } from './sample.ts'
import { HAND_TALLY, syntheticCalls } from './synthetic-calls.ts'

const on = (
  date: string,
  more: Partial<Pick<Contact, 'state' | 'method' | 'count' | 'language'>> = {}
): Contact => ({ ...CALL, date, ...more })
const named = (_: string, key: string) => key

describe('spans of days', () => {
  // 31 U.S.C. 1102: from October 1 to September 30 of the following year.
  test('the federal fiscal year ends on September 30 and is named by that year', () => {
    expect(fiscalYear(2027)).toEqual({ from: '2026-10-01', until: '2027-09-30' })
    expect(fiscalYearAt('2026-09-30')).toBe(2026)
    expect(fiscalYearAt('2026-10-01')).toBe(2027)
    const log = [on('2026-09-30'), on('2026-10-01'), on('2027-09-30'), on('2027-10-01')]
    expect(reportOnLog(log, fiscalYear(2027)).contacts).toBe(2)
    expect(reportOnLog(log, calendarYear(2026)).contacts).toBe(2)
  })

  test('every day lies in one quarter of its year', () => {
    fc.assert(
      fc.property(contacts, ({ date }) => {
        const { year, quarter } = quarterAt(date)
        const spans = [1, 2, 3, 4].map(each => quarterOf(year, each))
        const inside = spans.filter(({ from, until }) => from <= date && date <= until)
        expect(inside).toEqual([quarterOf(year, quarter)])
      })
    )
    expect(quarterOf(2028, 1)).toEqual({ from: '2028-01-01', until: '2028-03-31' })
    expect(() => quarterOf(2028, 5)).toThrow(RangeError)
  })

  test('months, over the end of a year and in a leap year', () => {
    expect(monthsBefore('2026-02-28', 3)).toBe('2025-11-01')
    expect(monthSpan('2028-02')).toEqual({ from: '2028-02-01', until: '2028-02-29' })
  })

  test.each([
    // In Chicago the clocks go back on November 1, 2026 and forward on March 14, 2027.
    ['2026-11-01T04:59:00Z', '2026-10-31'],
    ['2026-11-01T05:01:00Z', '2026-11-01'],
    ['2026-11-02T05:30:00Z', '2026-11-01'],
    ['2026-11-02T06:01:00Z', '2026-11-02'],
    ['2027-03-14T05:30:00Z', '2027-03-13'],
    ['2027-03-15T05:30:00Z', '2027-03-15'],
    // The last minutes of a fiscal year, when the day has long changed in UTC.
    ['2026-10-01T04:59:00Z', '2026-09-30'],
    ['2026-10-01T05:00:00Z', '2026-10-01']
  ])('%s is %s at the office', (moment, day) => {
    expect(localTime(new Date(moment), 'America/Chicago').date).toBe(day)
  })
})

describe('a report', () => {
  test('200 calls come to the hand tally, to the unit', () => {
    const report = reportOnLog(syntheticCalls(), quarterOf(2026, 4))
    expect(report).toEqual(HAND_TALLY)
  })

  test('what was written by mistake counts nowhere, an event by its heads', () => {
    const log = [
      on('2026-11-02', { state: 'void' }),
      on('2026-11-02', { method: 'event', count: 40 }),
      HOURS
    ]
    const report = reportOnLog(log, quarterOf(2026, 4))
    expect(report).toMatchObject({ contacts: 40, records: 1, volunteerMinutes: 150 })
    expect(report.tables.method).toEqual({ event: 40 })
    expect(report.volunteers).toEqual({ 7: 150 })
  })

  test('every table adds up to all contacts', () => {
    fc.assert(
      fc.property(fc.array(contacts), log => {
        const report = reportOnLog(log, ALL_DAYS)
        for (const table of LOG_TABLES) {
          const sum = Object.values(report.tables[table]).reduce((all, count) => all + count, 0)
          expect(sum, table).toBe(report.contacts)
        }
      })
    )
  })

  test('sums outlive their records: before and after, the year is the same', () => {
    fc.assert(
      fc.property(fc.array(contacts), entries => {
        const log = mergeLogs(entries)
        const latest = [...log.values()].flatMap(([one]) => one ?? [])
        const { sums, gone } = foldAway(log, '2026-03-01', [])
        const left = latest.filter(({ id }) => !gone.includes(id))
        expect(left.every(({ date }) => date >= '2026-03-01')).toBe(true)
        const months = sums.map(({ report }) => report)
        for (const span of [calendarYear(2025), calendarYear(2026), fiscalYear(2026)]) {
          expect(reportOnLog(left, span, months)).toEqual(reportOnLog(latest, span))
        }
      })
    )
  })

  test('records are kept for the months that the office says, whole months', () => {
    expect(keptFrom('2026-11-29', 60)).toBe('2021-11-01')
    expect(keptFrom('2026-11-29', null)).toBeNull()
  })
})

describe('small numbers are hidden from others', () => {
  const shown = (counts: Record<string, number>) => {
    const log = Object.entries(counts).flatMap(([language, count]) =>
      Array.from({ length: count }, () => on('2026-11-02', { language }))
    )
    return hideSmall(reportOnLog(log, ALL_DAYS)).tables.language
  }

  test('a number under five is hidden, and one more, or it could be worked out', () => {
    expect(shown({ en: 90, es: 20, vi: 3 })).toEqual({ en: 90, es: null, vi: null })
    expect(shown({ en: 90, es: 4, vi: 3 })).toEqual({ en: 90, es: null, vi: null })
    // Two hidden numbers that come to two could only be one and one.
    expect(shown({ en: 90, es: 20, vi: 1, so: 1 })).toEqual({
      en: 90,
      es: null,
      vi: null,
      so: null
    })
    expect(shown({ en: 90, es: 20 })).toEqual({ en: 90, es: 20 })
  })

  test('nothing hidden can be worked out, whatever the log', () => {
    fc.assert(
      fc.property(fc.array(contacts, { maxLength: 60 }), log => {
        const report = reportOnLog(log, ALL_DAYS)
        const given = hideSmall(report)
        for (const table of LOG_TABLES) {
          const all = Object.entries(report.tables[table])
          const hidden = all.filter(([key]) => given.tables[table][key] === null)
          for (const [key, count] of all) {
            if (count > 0 && count < 5) expect(given.tables[table][key]).toBeNull()
          }
          if (hidden.length === 0 || given.contacts === null) continue
          expect(hidden.length).toBeGreaterThan(1)
          expect(hidden.reduce((sum, [, count]) => sum + count, 0)).toBeGreaterThanOrEqual(5)
        }
        expect(given.volunteers).toEqual({})
      })
    )
  })

  test('of fewer than five people nothing is told', () => {
    const few = hideSmall(reportOnLog([CALL, CALL], ALL_DAYS))
    expect(few).toMatchObject({ contacts: null, records: null, minutes: null })
    expect(
      Object.values(few.tables)
        .flatMap(Object.values)
        .every(count => count === null)
    ).toBe(true)
  })
})

describe('a spreadsheet opens the report and runs none of it', () => {
  const report = showAll(reportOnLog(syntheticCalls(), quarterOf(2026, 4)))

  // RFC 4180, 2: CRLF ends each record, quotes are doubled, all records have as many fields.
  test('it is written as RFC 4180 says', () => {
    const text = reportCsv(report, () => 'Jars, "open"')
    const lines = text.replace('\uFEFF', '').split('\r\n')
    expect(lines.at(-1)).toBe('')
    expect(lines[5]).toMatch(/^2026-10-01,2026-12-31,method,phone,"Jars, ""open""",\d+$/)
    for (const row of reportRows(report, named)) expect(row).toHaveLength(6)
  })

  // OWASP ASVS 5.0, 1.2.10 for = + - @ tab and null; line ends and full-width signs from memory.
  test.each(['=', '+', '-', '@', '\t', '\r', '\n', '\u0000', '＝', '＋', '－', '＠'])(
    'a name that begins with %j is no formula',
    sign => {
      const text = reportCsv(report, () => `${sign}cmd`)
      const cells = text.split(/,(?=["']?[^,]*cmd)/).slice(1)
      expect(cells.length).toBeGreaterThan(10)
      for (const cell of cells) expect(cell).toMatch(/^"?'/)
    }
  )

  test('a hidden number says so', () => {
    const rows = reportRows(hideSmall(reportOnLog([CALL, CALL], ALL_DAYS)), named)
    expect(rows.find(row => row[3] === 'contacts')?.at(-1)).toBe('hidden')
  })
})
