import { useEffect, useState } from 'preact/hooks'
import { useSpeech } from '../../parts/setting.tsx'
import { dayText } from '../../words/contact-words.ts'
import type { Looked } from './keep-on-device.ts'

/** How the copy on this device stands. */
export interface CopyStanding {
  readonly kept: boolean
  /** A newer copy did not start, and this earlier one is shown in its place. */
  readonly rolledBack: boolean
  /** Every ferment and language could be opened. */
  readonly whole: boolean
  readonly look: () => Promise<Looked>
  readonly take: () => void
}

const SEEN = 1500

/** This copy: version, day of its content, a check of what it stands on, and a look for a newer one. */
export function StaffCopy({
  copy: { kept, rolledBack, whole, look, take },
  writes,
  reachedOn
}: {
  copy: CopyStanding
  writes: boolean
  reachedOn: string | null
}) {
  const { words } = useSpeech()
  const [persisted, setPersisted] = useState(false)
  const [looked, setLooked] = useState<Looked | 'looking' | null>(null)
  useEffect(() => {
    navigator.storage?.persisted?.().then(setPersisted, () => undefined)
  }, [])
  const update = async () => {
    setLooked('looking')
    const found = await look()
    setLooked(found)
    // Long enough to be read: then the page is loaded anew.
    if (found === 'newer') setTimeout(take, SEEN)
  }
  const outcome = rolledBack && looked === 'same' ? 'rolled-back' : looked
  const checks = { kept, whole, persisted, writes }
  return (
    <section class="staff-copy">
      <h2>{words.t('ui:staff.copy')}</h2>
      <p>
        {words.t('ui:kiosk.edition', {
          version: __JARSIDE_VERSION__,
          date: dayText(words, __JARSIDE_CONTENT_DATE__)
        })}
      </p>
      {rolledBack && <p class="notice">{words.t('ui:staff.looked.rolled-back')}</p>}
      <dl>
        {(['kept', 'whole', 'persisted', 'writes'] as const).map(check => (
          <div key={check} data-check={check} data-holds={checks[check]}>
            <dt>{words.t(`ui:staff.checks.${check}`)}</dt>
            <dd>{words.t(checks[check] ? 'ui:staff.yes' : 'ui:staff.no')}</dd>
          </div>
        ))}
        <div data-check="reached">
          <dt>{words.t('ui:staff.reached')}</dt>
          <dd>{reachedOn === null ? words.t('ui:staff.never') : dayText(words, reachedOn)}</dd>
        </div>
      </dl>
      <button
        type="button"
        class="secondary"
        data-action="update"
        aria-disabled={looked === 'looking'}
        onClick={() => looked !== 'looking' && update()}
      >
        {words.t('ui:staff.update')}
      </button>
      <p role="status" class="staff-looked">
        {outcome !== null && words.t(`ui:staff.looked.${outcome}`)}
      </p>
    </section>
  )
}
