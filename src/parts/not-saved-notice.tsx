import type { OfficeCounty } from '../office/office-pack.ts'
import { entryLine } from '../words/contact-words.ts'
import { useSpeech } from './setting.tsx'
import { handOver, type LogInHand, linesOf } from './use-contact-log.ts'

/** Says what a browser did not keep, and offers it as a file: it is in memory alone. */
export function NotSavedNotice({
  log: { unsaved, why, again, letGo },
  counties
}: {
  log: LogInHand
  counties: readonly OfficeCounty[]
}) {
  const { words } = useSpeech()
  if (why === null) return null
  const what = unsaved.map(entry => entryLine(words, counties, entry)).join('; ')
  return (
    <div class="notice not-saved" role="alert">
      <p>{words.t(`ui:contacts.not-saved.${why}`, { what })}</p>
      <div class="actions">
        <button
          type="button"
          class="primary"
          data-action="unsaved-file"
          onClick={() => {
            handOver('not-saved.jsonl', 'application/jsonl', linesOf(unsaved))
            letGo()
          }}
        >
          {words.t('ui:contacts.not-saved.file')}
        </button>
        <button type="button" class="secondary" data-action="save-again" onClick={() => again()}>
          {words.t('ui:contacts.not-saved.again')}
        </button>
      </div>
    </div>
  )
}
