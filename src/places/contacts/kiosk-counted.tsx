import { useState } from 'preact/hooks'
import { contactsOf, keepCounts, readCounts, sumsOf } from '../../contacts/kiosk-counts.ts'
import { notSaved } from '../../contacts/not-saved.ts'
import { useSpeech } from '../../parts/setting.tsx'
import type { LogInHand } from '../../parts/use-contact-log.ts'
import { dayText } from '../../words/contact-words.ts'

/** What the kiosk on this device has counted, to be taken into the log; nothing where it counted nothing. */
export function KioskCounted({
  area,
  log,
  onTaken
}: {
  area: string | null
  log: LogInHand
  onTaken: () => void
}) {
  const { words } = useSpeech()
  const [counts, setCounts] = useState(readCounts)
  const [said, setSaid] = useState('')
  const { finished, abandoned, since } = sumsOf(counts)
  if (since === null && said === '') return null
  const take = async () => {
    let left = counts
    try {
      const store = await log.open()
      for (const { line, contact } of contactsOf(counts, area)) {
        if (contact !== null) await store.add(contact)
        // A line is taken off as soon as the log has it: what fails later stays counted, and nothing twice.
        const { [line]: _, ...rest } = left
        left = rest
        keepCounts(left)
      }
      setSaid(words.t('ui:contacts.kiosk.taken', { count: finished }))
    } catch (error) {
      const what = words.t('ui:contacts.kiosk.title')
      setSaid(words.t(`ui:contacts.not-saved.${notSaved(error).why}`, { what }))
    }
    setCounts(left)
    onTaken()
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
