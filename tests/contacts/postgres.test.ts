import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type LogEntry, lineOf } from '../../src/contacts/contact.ts'
import { ALL_DAYS, fiscalYear, quarterOf } from '../../src/contacts/day-span.ts'
import { LOG_TABLES, type LogReport, reportOnLog } from '../../src/contacts/log-report.ts'
import { latestOf, mergeLogs } from '../../src/contacts/merge.ts'
import { COPY, type PostgresServer, postgresPrograms, startPostgres } from './postgres-server.ts'
import { CALL, CANNING, contacts, HOURS, REFERRED } from './sample.ts'
import { HAND_TALLY, syntheticCalls } from './synthetic-calls.ts'

const programs = postgresPrograms()
const skipped = programs === null
const name = skipped
  ? 'SKIPPED, nothing of this was tested: no PostgreSQL server here (apt-get install postgresql)'
  : 'a shared log on PostgreSQL'

const linesOf = (entries: readonly LogEntry[]) => entries.map(one => `${lineOf(one)}\n`).join('')

/** A report in the rows that the database gives. */
function rowsOf(report: LogReport): Record<string, number> {
  const rows = LOG_TABLES.flatMap(table =>
    Object.entries(report.tables[table]).map(([key, count]) => [`${table} ${key}`, count] as const)
  )
  return Object.fromEntries([
    ...rows,
    ...(report.records === 0
      ? []
      : ([
          ['all contacts', report.contacts],
          ['all records', report.records],
          ['all minutes', report.minutes]
        ] as const)),
    ...Object.entries(report.volunteers).map(([code, n]) => [`volunteer-minutes ${code}`, n])
  ])
}

describe.skipIf(skipped)(name, () => {
  let server: PostgresServer
  beforeAll(() => {
    server = startPostgres(programs ?? '')
  })
  afterAll(() => server?.stop())
  const empty = () => server.run('truncate contacts.entry')
  const rows = (sql: string) =>
    Object.fromEntries(
      server
        .run(sql, 'jarside_coordinator')
        .map(([table, key, people]) => [`${table} ${key}`, Number(people)])
    )
  const report = ({ from, until }: { from: string; until: string }) =>
    rows(`select * from contacts.report('${from}', '${until}')`)

  test('200 calls of two desks come to the hand tally, to the unit, by the same report', () => {
    empty()
    const calls = syntheticCalls()
    server.copy(linesOf(calls.slice(0, 120)))
    server.copy(linesOf(calls.slice(90)))
    expect(report(quarterOf(2026, 4))).toEqual(rowsOf(HAND_TALLY))
    const columns = 'select table_name, key, people from contacts'
    expect(rows(`${columns}.by_quarter where calendar_year = 2026 and quarter = 4`)).toEqual(
      rowsOf(HAND_TALLY)
    )
    expect(rows(`${columns}.by_fiscal_year where fiscal_year = 2027`)).toEqual(rowsOf(HAND_TALLY))
    expect(rows(`${columns}.by_calendar_year where calendar_year = 2026`)).toEqual(
      rowsOf(HAND_TALLY)
    )
  })

  test('whatever the versions and their order, file and database count the same', () => {
    for (const seed of [1, 2, 3]) {
      empty()
      const entries = [...fc.sample(contacts, { numRuns: 120, seed }), HOURS]
      server.copy(linesOf([...entries].reverse()))
      server.copy(linesOf(entries))
      const latest = latestOf(mergeLogs(entries))
      for (const span of [ALL_DAYS, fiscalYear(2026), quarterOf(2026, 1)]) {
        expect(report(span)).toEqual(rowsOf(reportOnLog(latest, span)))
      }
    }
  })

  test('September 30 and October 1 lie in two fiscal years', () => {
    empty()
    const other = { ...CANNING, date: '2026-10-01' }
    server.copy(linesOf([{ ...CALL, date: '2026-09-30' }, other]))
    const years = server.run(
      "select fiscal_year, people from contacts.by_fiscal_year where key = 'contacts' order by 1"
    )
    expect(years).toEqual([
      ['2026', '1'],
      ['2027', '1']
    ])
  })

  test('a desk may only add, and a coordinator only read', () => {
    empty()
    server.copy(linesOf([CALL]))
    const denied = 'permission denied'
    for (const sql of [
      'select * from contacts.intake',
      'select * from contacts.entry',
      'select * from contacts.latest',
      'delete from contacts.entry',
      'update contacts.entry set minutes = 0',
      "insert into contacts.entry (kind) values ('hours')",
      "select * from contacts.report('2026-01-01', '2026-12-31')"
    ]) {
      expect(server.refused(sql, 'jarside_desk'), sql).toContain(denied)
    }
    for (const sql of [
      "insert into contacts.intake values ('{}')",
      'delete from contacts.entry',
      'update contacts.entry set minutes = 0',
      'truncate contacts.entry'
    ]) {
      expect(server.refused(sql, 'jarside_coordinator'), sql).toContain(denied)
    }
    expect(server.run('select count(*) from contacts.entry', 'jarside_coordinator')).toEqual([
      ['1']
    ])
  })

  test.each<[string, object]>([
    ['a field too many', { ...CALL, name: null }],
    ['a field too few', { kind: 'hours', id: HOURS.id }],
    ['a sentence in a field', { ...CALL, language: 'Maria Lopez called' }],
    ['a phone number', { ...CALL, area: '555-0142' }],
    ['a verdict about a person', { ...CALL, batch: 'emergency' }],
    ['a sheet where somebody was referred', { ...REFERRED, sheet: true }],
    ['a referral to a doctor', { ...CALL, referral: 'doctor' }],
    ['a verdict beside no tree', { ...CANNING, batch: 'likely-mold' }],
    ['a head count without an event', { ...CALL, count: 2 }],
    ['hours without a volunteer', { ...HOURS, volunteer: null }],
    ['a contact without a method', { ...CALL, method: null }]
  ])('%s is refused with the whole file, and kept nowhere', (_, line) => {
    empty()
    const file = `${linesOf([HOURS])}${JSON.stringify(line)}\n`
    expect(server.refused(COPY, 'jarside_desk', file)).toContain('ERROR')
    expect(server.run('select count(*) from contacts.entry')).toEqual([['0']])
  })
})
