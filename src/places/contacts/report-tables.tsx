import { rowsOf, type ShownCounts, type ShownReport } from '../../contacts/hide-small.ts'
import { LOG_TABLES, type LogTable } from '../../contacts/log-report.ts'
import type { OfficeCounty } from '../../office/office-pack.ts'
import { useSpeech } from '../../parts/setting.tsx'
import { contactKeyName, inCountry } from '../../words/contact-words.ts'
import type { Words } from '../../words/words.ts'

const shownOf = (words: Words, count: number | null | undefined): string =>
  count === null ? words.t('ui:contacts.hidden') : (count ?? 0).toLocaleString(inCountry(words))

/** The few numbers that are asked for most. */
export function Figures({ report }: { report: ShownReport }) {
  const { words } = useSpeech()
  const figures = [
    ['contacts', report.contacts],
    ['direct', report.tables.reach.direct],
    ['pending', report.tables.state.pending],
    ['minutes', report.minutes]
  ] as const
  return (
    <dl class="figures">
      {figures.map(([name, count]) => (
        <div key={name} data-figure={name}>
          <dt>{words.t(`ui:contacts.figures.${name}`)}</dt>
          <dd>{shownOf(words, count)}</dd>
        </div>
      ))}
      <div data-figure="hours">
        <dt>{words.t('ui:contacts.figures.hours')}</dt>
        <dd>
          {(report.volunteerMinutes / 60).toLocaleString(inCountry(words), {
            maximumFractionDigits: 1
          })}
        </dd>
      </div>
    </dl>
  )
}

/** Every table of a report, its bars beside its numbers. */
export function ReportTables({
  report,
  counties
}: {
  report: ShownReport
  counties: readonly OfficeCounty[]
}) {
  const { words } = useSpeech()
  if (report.records === 0 && report.volunteerMinutes === 0) {
    return <p class="nothing">{words.t('ui:contacts.nothing')}</p>
  }
  // Of a table with one row of nothing there is nothing to see.
  const tables = LOG_TABLES.filter(table => {
    const keys = Object.keys(report.tables[table])
    return keys.length > 1 || (keys[0] !== undefined && keys[0] !== 'none')
  })
  return (
    <div class="tables">
      {tables.map(table => (
        <ReportTable
          key={table}
          title={words.t(`ui:contacts.tables.${table}`)}
          unit={words.t('ui:contacts.columns.people')}
          counts={report.tables[table]}
          nameOf={key => contactKeyName(words, counties, table, key)}
          table={table}
        />
      ))}
      {Object.keys(report.volunteers).length > 0 && (
        <ReportTable
          title={words.t('ui:contacts.tables.volunteers')}
          unit={words.t('ui:contacts.columns.minutes')}
          counts={report.volunteers}
          nameOf={code => `${words.t('ui:contacts.columns.volunteer')} ${code}`}
          table="volunteers"
        />
      )}
    </div>
  )
}

const WIDTH = 100

function ReportTable({
  title,
  unit,
  counts,
  nameOf,
  table
}: {
  title: string
  unit: string
  counts: ShownCounts
  nameOf: (key: string) => string
  table: LogTable | 'volunteers'
}) {
  const { words } = useSpeech()
  const rows = rowsOf(counts)
  const most = Math.max(1, ...rows.map(([, count]) => count ?? 0))
  return (
    <table class="counts" data-table={table}>
      <caption>{title}</caption>
      <thead class="visually-hidden">
        <tr>
          <th scope="col">{words.t('ui:contacts.columns.name')}</th>
          <th scope="col">{unit}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(([key, count]) => (
          <tr key={key} data-key={key}>
            <th scope="row">{nameOf(key)}</th>
            <td class="counts-number">{shownOf(words, count)}</td>
            <td class="counts-bar">
              <svg viewBox={`0 0 ${WIDTH} 10`} preserveAspectRatio="none" aria-hidden="true">
                {count !== null && <rect width={(WIDTH * count) / most} height="10" />}
              </svg>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
