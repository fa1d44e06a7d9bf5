import { useEffect } from 'preact/hooks'
import type { OfficePack } from '../../office/office-pack.ts'
import { isPast } from '../../office/stale.ts'
import { speechIn, type TextsByTag } from '../../opening/speech.ts'
import { Foot } from '../../parts/foot.tsx'
import { LanguageSwitch } from '../../parts/language-switch.tsx'
import { type Speech, SpeechProvider } from '../../parts/setting.tsx'
import { StepHeading } from '../../parts/step-heading.tsx'
import { Text } from '../../parts/text.tsx'
import type { Language } from '../../words/languages.ts'
import { SOURCE_TAG } from '../../words/words.ts'
import { GrowingJar } from './growing-jar.tsx'
import { HoldButton } from './hold-button.tsx'
import { STALE_DAYS } from './settings.ts'

/** The screen that waits: a jar, the languages, and of this copy how old it is. */
export function Start({
  languages,
  texts,
  due,
  kept,
  quiet,
  office,
  today,
  outdated,
  onLanguage,
  onStaff
}: {
  languages: readonly Language[]
  texts: TextsByTag
  /** The latest day on which a review is due; null until that is known. */
  due: string | null
  kept: boolean
  quiet: boolean
  office: OfficePack | null
  today: Date
  /** This device has not reached its server for long. */
  outdated: boolean
  onLanguage: (tag: string) => void
  onStaff: () => void
}) {
  useEffect(() => {
    document.title = 'Jarside'
  }, [])
  const english = speechIn(texts, SOURCE_TAG)
  const spoken = languages.map(({ tag, name }) => ({ tag, name, ...speechIn(texts, tag) }))
  return (
    <SpeechProvider value={inBoth(texts, languages)}>
      <div class="screen start">
        <main class="main">
          <GrowingJar />
          <div class="start-words">
            <StepHeading step="start" quiet={quiet}>
              {spoken.map(({ tag, words }) => (
                <span key={tag} lang={tag} class="start-ask">
                  {words.t('ui:kiosk.ask')}
                </span>
              ))}
            </StepHeading>
            <div class="start-languages">
              <LanguageSwitch
                languages={spoken}
                look="start-language"
                onLanguage={onLanguage}
                label={({ name, words }) => (
                  <>
                    <span class="start-name">{name}</span>
                    <span class="start-begin">{words.t('ui:kiosk.begin')}</span>
                  </>
                )}
              />
            </div>
            {spoken.map(({ tag, words }) => (
              <p key={tag} lang={tag} class="start-kept">
                {words.t('ui:kiosk.nothing-kept')}
              </p>
            ))}
            {due !== null && isPast(due, today) && (
              <p class="notice">
                <Text k="ui:overdue" values={{ due }} />
              </p>
            )}
            {outdated && (
              <p class="notice">
                <Text k="ui:kiosk.outdated" values={{ days: STALE_DAYS }} />
              </p>
            )}
          </div>
        </main>
        <Foot
          office={office}
          today={today}
          below={
            <div class="start-below" lang={SOURCE_TAG}>
              <p class="start-edition">
                {english.words.t('ui:kiosk.edition', EDITION)} ·{' '}
                {english.words.t(kept ? 'ui:kiosk.kept' : 'ui:kiosk.not-kept')}
              </p>
              <HoldButton
                look="start-staff"
                label={english.words.t('ui:staff.open')}
                onHeld={onStaff}
              >
                <span aria-hidden="true">{english.words.t('ui:staff.title')}</span>
              </HoldButton>
            </div>
          }
        />
      </div>
    </SpeechProvider>
  )
}

/** Nobody has said yet what they read: what stands here stands in English and the first other language. */
export function inBoth(texts: TextsByTag, languages: readonly Language[]): Speech {
  const other = languages.find(({ tag }) => tag !== SOURCE_TAG)
  const second = other && {
    words: speechIn(texts, other.tag).words,
    shows: 'everything' as const
  }
  return { ...speechIn(texts, SOURCE_TAG), second: second ?? null, dials: false }
}

const EDITION = {
  version: __JARSIDE_VERSION__,
  date: new Intl.DateTimeFormat(SOURCE_TAG, { dateStyle: 'long', timeZone: 'UTC' }).format(
    new Date(__JARSIDE_CONTENT_DATE__)
  )
}
