import { useEffect } from 'preact/hooks'
import type { OfficePack } from '../../office/office-pack.ts'
import { isPast } from '../../office/stale.ts'
import { speechIn, type TextsByTag } from '../../opening/speech.ts'
import { Foot } from '../../parts/foot.tsx'
import { LanguageSwitch } from '../../parts/language-switch.tsx'
import { SpeechProvider } from '../../parts/setting.tsx'
import { StepHeading } from '../../parts/step-heading.tsx'
import { Text } from '../../parts/text.tsx'
import type { Language } from '../../words/languages.ts'
import { SOURCE_TAG } from '../../words/words.ts'
import { GrowingJar } from './growing-jar.tsx'

/** The screen that waits: a jar, the languages, and of this copy how old it is. */
export function Start({
  languages,
  texts,
  due,
  kept,
  quiet,
  office,
  today,
  onLanguage
}: {
  languages: readonly Language[]
  texts: TextsByTag
  /** The latest day on which a review is due; null until that is known. */
  due: string | null
  kept: boolean
  quiet: boolean
  office: OfficePack | null
  today: Date
  onLanguage: (tag: string) => void
}) {
  useEffect(() => {
    document.title = 'Jarside'
  }, [])
  const english = speechIn(texts, SOURCE_TAG)
  const spoken = languages.map(({ tag, name }) => ({ tag, name, ...speechIn(texts, tag) }))
  const other = spoken.find(({ tag }) => tag !== SOURCE_TAG)
  // Nobody has said yet what they read: what stands here stands in both.
  const second = other ? { words: other.words, shows: 'everything' as const } : null
  return (
    <SpeechProvider value={{ ...english, second, dials: false }}>
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
          </div>
        </main>
        <Foot
          office={office}
          today={today}
          below={
            <p class="start-edition" lang={SOURCE_TAG}>
              {english.words.t('ui:kiosk.edition', EDITION)} ·{' '}
              {english.words.t(kept ? 'ui:kiosk.kept' : 'ui:kiosk.not-kept')}
            </p>
          }
        />
      </div>
    </SpeechProvider>
  )
}

const EDITION = {
  version: __JARSIDE_VERSION__,
  date: new Intl.DateTimeFormat(SOURCE_TAG, { dateStyle: 'long', timeZone: 'UTC' }).format(
    new Date(__JARSIDE_CONTENT_DATE__)
  )
}
