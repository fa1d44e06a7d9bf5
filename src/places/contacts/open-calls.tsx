import type { LogEntry } from '../../contacts/contact.ts'
import type { Versions } from '../../contacts/log-store.ts'
import type { OfficeCounty } from '../../office/office-pack.ts'
import { useSpeech } from '../../parts/setting.tsx'
import { dayText, entryLine } from '../../words/contact-words.ts'

/** How many stand on the page at once: whoever resolves them sees the next ones. */
const SHOWN = 50

/** What is still pending in a time, oldest first. */
export function OpenCalls({
  entries,
  counties,
  onResolve
}: {
  entries: readonly LogEntry[]
  counties: readonly OfficeCounty[]
  onResolve: (entry: LogEntry) => void
}) {
  const { words } = useSpeech()
  const open = entries.filter(({ state }) => state === 'pending')
  return (
    <section class="open-calls">
      <h2>{words.t('ui:contacts.open-calls.title')}</h2>
      {open.length === 0 && <p>{words.t('ui:contacts.open-calls.none')}</p>}
      <ul>
        {open.slice(0, SHOWN).map(entry => (
          <li key={entry.id}>
            <span>
              {dayText(words, entry.date)}: {entryLine(words, counties, entry)}
            </span>{' '}
            <button
              type="button"
              class="quiet"
              data-action="resolve"
              onClick={() => onResolve(entry)}
            >
              {words.t('ui:contacts.open-calls.resolve')}
            </button>
          </li>
        ))}
      </ul>
      {open.length > SHOWN && (
        <p>{words.t('ui:contacts.open-calls.more', { count: open.length - SHOWN })}</p>
      )}
    </section>
  )
}

/** What was written more than once: the version that counts, and those that gave way. */
export function Edits({
  edits,
  counties,
  onSeen
}: {
  edits: readonly Versions[]
  counties: readonly OfficeCounty[]
  onSeen: (id: string) => void
}) {
  const { words } = useSpeech()
  if (edits.length === 0) return null
  const line = (entry: LogEntry) =>
    [
      `${dayText(words, entry.date)}: ${entryLine(words, counties, entry)}`,
      ...(entry.state === 'void' ? [words.t('ui:contacts.record.undone')] : [])
    ].join('. ')
  return (
    <section class="edits">
      <h2>{words.t('ui:contacts.edits.title')}</h2>
      <p>{words.t('ui:contacts.edits.how')}</p>
      <ul>
        {edits.map(({ latest, earlier }) => (
          <li key={latest.id}>
            <strong>{line(latest)}</strong>
            {earlier.map(entry => (
              <del key={entry.mark}>{line(entry)}</del>
            ))}{' '}
            <button
              type="button"
              class="quiet"
              data-action="seen"
              onClick={() => onSeen(latest.id)}
            >
              {words.t('ui:contacts.edits.seen')}
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}
