import { useState } from 'preact/hooks'
import type { LogEntry } from '../../contacts/contact.ts'
import { contactsOf, keepCounts, readCounts, sumsOf } from '../../contacts/kiosk-counts.ts'
import { useSpeech } from '../../parts/setting.tsx'
import { dayText } from '../../words/contact-words.ts'

/** What the kiosk on this device has counted, to be taken into the log; nothing where it counted nothing. */
export function KioskCounted({
  area,
  onSave
}: {
  area: string | null
  onSave: (entry: LogEntry | null) => Promise<boolean>
}) {
  const { words } = useSpeech()
  const [counts, setCounts] = useState(readCounts)
  const [said, setSaid] = useState('')
  const { finished, abandoned, since } = sumsOf(counts)
  if (since === null && said === '') return null
  const take = async () => {
    for (const contact of contactsOf(counts, area)) {
      // What was not saved stays counted here too: nothing is lost, and nothing taken in twice is hidden.
      if (!(await onSave(contact))) return
    }
    keepCounts({})
    setCounts({})
    setSaid(words.t('ui:contacts.kiosk.taken', { count: finished }))
  }
  return (
    <section class="contacts-kiosk">
      <h2>{words.t('ui:contacts.kiosk.title')}</h2>
      {since !== null && (
        <>
          <p>
            {words.t('ui:contacts.kiosk.counted', {
              finished,
              abandoned,
              day: dayText(words, since)
            })}
          </p>
          <button type="button" class="secondary" data-action="take-kiosk" onClick={take}>
            {words.t('ui:contacts.kiosk.take')}
          </button>
        </>
      )}
      <p role="status">{said}</p>
    </section>
  )
}
