import type { LogEntry } from '../../contacts/contact.ts'
import type { ShownReport } from '../../contacts/hide-small.ts'
import { reportCsv } from '../../contacts/report-rows.ts'
import type { OfficeCounty } from '../../office/office-pack.ts'
import { LogBox } from '../../parts/log-fields.tsx'
import { useSpeech } from '../../parts/setting.tsx'
import { handOver, linesOf } from '../../parts/use-contact-log.ts'
import { contactKeyName } from '../../words/contact-words.ts'

/** The report as a file or on paper, and the records of a time for whoever adds up several desks. */
export function TakeOut({
  shown,
  entries,
  counties,
  least,
  hide,
  onHide
}: {
  shown: ShownReport
  entries: readonly LogEntry[]
  counties: readonly OfficeCounty[]
  least: number
  hide: boolean
  onHide: (hide: boolean) => void
}) {
  const { words } = useSpeech()
  const name = `jarside-${shown.from}-${shown.until}`
  const csv = () => reportCsv(shown, (table, key) => contactKeyName(words, counties, table, key))
  return (
    <section class="take-out">
      <h2>{words.t('ui:contacts.export.title')}</h2>
      <LogBox
        label={words.t('ui:contacts.export.hide', { least })}
        name="hide"
        checked={hide}
        onChange={onHide}
      />
      <div class="actions">
        <button
          type="button"
          class="secondary"
          data-action="csv"
          onClick={() => handOver(`${name}.csv`, 'text/csv', csv())}
        >
          {words.t('ui:contacts.export.csv')}
        </button>
        <button type="button" class="secondary" data-action="print" onClick={() => print()}>
          {words.t('ui:contacts.export.print')}
        </button>
      </div>
      <div class="actions">
        <button
          type="button"
          class="secondary"
          data-action="lines"
          onClick={() => handOver(`${name}.jsonl`, 'application/jsonl', linesOf(entries))}
        >
          {words.t('ui:contacts.export.lines')}
        </button>
        <p class="actions-hint">{words.t('ui:contacts.export.lines-how')}</p>
      </div>
    </section>
  )
}
