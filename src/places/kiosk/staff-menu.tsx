import { useState } from 'preact/hooks'
import { readCounts } from '../../contacts/kiosk-counts.ts'
import { dayOf } from '../../contacts/kiosk-day.ts'
import type { CatalogueEntry } from '../../parts/catalogue-entry.ts'
import { useSpeech } from '../../parts/setting.tsx'
import { StepHeading } from '../../parts/step-heading.tsx'
import type { Language } from '../../words/languages.ts'
import { CONTRASTS, DIAGONALS, IDLE_SECONDS, TEXT_SIZES } from './settings.ts'
import { OneOf, SomeOf } from './staff-choices.tsx'
import { type CopyStanding, StaffCopy } from './staff-copy.tsx'
import { StaffVoices } from './staff-voices.tsx'
import type { SettingsInHand } from './use-settings.ts'
import type { Speaker } from './use-voices.ts'

export interface StaffMenuProps {
  readonly inHand: SettingsInHand
  /** The ferments that there are, and the languages. */
  readonly trees: readonly CatalogueEntry[]
  readonly languages: readonly Language[]
  /** Who reads aloud here, by language. */
  readonly speakers: ReadonlyMap<string, Speaker>
  readonly copy: CopyStanding
  /** Today in the office's time zone, as YYYY-MM-DD. */
  readonly date: string
  readonly onClean: () => void
  readonly onNewPin: () => void
}

/** What staff can do and settle at the table. */
export function StaffMenu({
  inHand: { settings, writes, change },
  trees,
  languages,
  speakers,
  copy,
  date,
  onClean,
  onNewPin
}: StaffMenuProps) {
  const { words } = useSpeech()
  const [day] = useState(() => dayOf(readCounts(), date))
  const numbers = [
    [words.t('ui:staff.finished'), day.finished],
    [words.t('ui:staff.referred'), day.referred],
    [words.t('ui:staff.abandoned'), day.abandoned],
    ...languages.map(({ tag, name }) => [name, day.languages[tag] ?? 0] as const)
  ] as const
  return (
    <div class="staff">
      <StepHeading step="staff">{words.t('ui:staff.title')}</StepHeading>
      {!writes && <p class="notice">{words.t('ui:staff.not-kept-here')}</p>}
      <div class="staff-first">
        <button type="button" class="primary" data-action="clean" onClick={onClean}>
          {words.t('ui:staff.clean')}
        </button>
        <button type="button" class="secondary" data-action="new-pin" onClick={onNewPin}>
          {words.t('ui:staff.new-pin')}
        </button>
      </div>
      <section class="staff-day">
        <h2>{words.t('ui:staff.today')}</h2>
        <dl>
          {numbers.map(([name, count]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{count}</dd>
            </div>
          ))}
        </dl>
        <p class="staff-how">{words.t('ui:staff.counts-how')}</p>
      </section>
      <SomeOf
        name={words.t('ui:staff.ferments')}
        how={words.t('ui:staff.at-least-one')}
        all={trees.map(({ id, drawing }) => ({ id, drawing, label: words.t(`${id}:title`) }))}
        without={settings.withoutTrees}
        onChange={withoutTrees => change({ withoutTrees })}
      />
      <SomeOf
        name={words.t('ui:staff.languages')}
        how={words.t('ui:staff.at-least-one')}
        all={languages.map(({ tag, name }) => ({ id: tag, label: name, lang: tag }))}
        without={settings.withoutLanguages}
        onChange={withoutLanguages => change({ withoutLanguages })}
      />
      <OneOf
        name={words.t('ui:staff.idle')}
        how={words.t('ui:staff.idle-how')}
        all={IDLE_SECONDS}
        chosen={settings.idleSeconds}
        label={seconds =>
          seconds < 60
            ? words.t('ui:staff.seconds', { count: seconds })
            : words.t('ui:staff.minutes', { count: seconds / 60 })
        }
        onChoose={idleSeconds => change({ idleSeconds })}
      />
      <OneOf
        name={words.t('ui:kiosk.text-size')}
        how={words.t('ui:staff.begin-with')}
        all={TEXT_SIZES}
        chosen={settings.text}
        label={size => words.t(`ui:kiosk.text-sizes.${size}`)}
        onChoose={text => change({ text })}
      />
      <OneOf
        name={words.t('ui:kiosk.contrast')}
        how={words.t('ui:staff.begin-with')}
        all={CONTRASTS}
        chosen={settings.contrast}
        label={contrast => words.t(`ui:kiosk.contrasts.${contrast}`)}
        onChoose={contrast => change({ contrast })}
      />
      <OneOf
        name={words.t('ui:staff.screen')}
        how={words.t('ui:staff.screen-how')}
        all={DIAGONALS}
        chosen={settings.inches}
        label={inches =>
          inches === null
            ? words.t('ui:staff.not-set')
            : words.t('ui:staff.inches', { count: inches })
        }
        onChoose={inches => change({ inches })}
      />
      <StaffVoices languages={languages} speakers={speakers} />
      <StaffCopy copy={copy} writes={writes} reachedOn={settings.reachedOn} />
    </div>
  )
}
