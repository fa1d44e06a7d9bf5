import type { Contact, LogEntry } from './contact.ts'
import { type DaySpan, isIn } from './day-span.ts'

/** What contacts are counted by, in the order of a report. */
export const LOG_TABLES = [
  'method',
  'reach',
  'topic',
  'batch',
  'container',
  'referral',
  'language',
  'area',
  'state',
  'sheet',
  'know-how'
] as const
export type LogTable = (typeof LOG_TABLES)[number]

/** KeyCounts by key. The people of one table add up to all contacts. */
export type KeyCounts = Readonly<Record<string, number>>

/** What a span of days comes to. */
export interface LogReport extends DaySpan {
  /** People reached: an event counts by its head count. */
  readonly contacts: number
  /** Entries that they stand in. */
  readonly records: number
  readonly minutes: number
  readonly tables: Readonly<Record<LogTable, KeyCounts>>
  /** Minutes by volunteer's number. */
  readonly volunteers: KeyCounts
  readonly volunteerMinutes: number
}

/** Where a contact stands in each table, in the order of `LOG_TABLES`. */
export const keysOf = (contact: Contact): readonly string[] => [
  contact.method,
  contact.direct ? 'direct' : 'indirect',
  contact.tree ?? contact.topic,
  contact.referred ? 'referred' : (contact.batch ?? 'none'),
  contact.container ?? 'none',
  contact.referral ?? 'none',
  contact.language,
  contact.area ?? 'unknown',
  contact.state,
  contact.sheet ? 'yes' : 'no',
  contact.knowHow ?? 'none'
]

/** Adds up contacts and hours, one at a time. */
export class LogTally {
  #contacts = 0
  #records = 0
  #minutes = 0
  readonly #tables: readonly Map<string, number>[] = LOG_TABLES.map(() => new Map())
  readonly #volunteers = new Map<string, number>()

  /** KeyCounts one record by its keys, in the order of `LOG_TABLES`. */
  addKeys(keys: readonly string[], count: number, minutes: number): void {
    this.#contacts += count
    this.#records += 1
    this.#minutes += minutes
    this.#tables.forEach((table, index) => {
      more(table, keys[index] ?? 'none', count)
    })
  }

  addHours(volunteer: string, minutes: number): void {
    more(this.#volunteers, volunteer, minutes)
  }

  /** KeyCounts one entry; what was written by mistake counts nowhere. */
  add(entry: LogEntry): void {
    if (entry.state === 'void') return
    if (entry.kind === 'hours') this.addHours(String(entry.volunteer), entry.minutes)
    else this.addKeys(keysOf(entry), entry.count, entry.minutes)
  }

  /** Adds what was counted before: a month whose records are gone. */
  addReport(report: LogReport): void {
    this.#contacts += report.contacts
    this.#records += report.records
    this.#minutes += report.minutes
    LOG_TABLES.forEach((name, index) => {
      const table = this.#tables[index]
      for (const [key, count] of Object.entries(report.tables[name])) {
        if (table !== undefined) more(table, key, count)
      }
    })
    for (const [code, minutes] of Object.entries(report.volunteers)) this.addHours(code, minutes)
  }

  report({ from, until }: DaySpan): LogReport {
    const tables = LOG_TABLES.map((name, index) => [name, sorted(this.#tables[index])] as const)
    const volunteers = sorted(this.#volunteers)
    return {
      from,
      until,
      contacts: this.#contacts,
      records: this.#records,
      minutes: this.#minutes,
      tables: tablesOf(name => tables.find(([own]) => own === name)?.[1] ?? {}),
      volunteers,
      volunteerMinutes: Object.values(volunteers).reduce((sum, minutes) => sum + minutes, 0)
    }
  }
}

/** What a span comes to, of entries of which each stands once. */
export function reportOnLog(
  entries: Iterable<LogEntry>,
  span: DaySpan,
  months: readonly LogReport[] = []
): LogReport {
  const tally = new LogTally()
  for (const entry of entries) if (isIn(span, entry.date)) tally.add(entry)
  for (const month of months) {
    if (isIn(span, month.from) && isIn(span, month.until)) tally.addReport(month)
  }
  return tally.report(span)
}

/** One value for each table. */
export const tablesOf = <T>(of: (name: LogTable) => T): Readonly<Record<LogTable, T>> => ({
  method: of('method'),
  reach: of('reach'),
  topic: of('topic'),
  batch: of('batch'),
  container: of('container'),
  referral: of('referral'),
  language: of('language'),
  area: of('area'),
  state: of('state'),
  sheet: of('sheet'),
  'know-how': of('know-how')
})

const more = (table: Map<string, number>, key: string, count: number): void => {
  table.set(key, (table.get(key) ?? 0) + count)
}

/** Equal ones by name, so that two reports of the same log are the same text. */
const sorted = (table: ReadonlyMap<string, number> = new Map()): KeyCounts =>
  Object.fromEntries([...table].sort(([a, n], [b, m]) => m - n || (a < b ? -1 : 1)))
