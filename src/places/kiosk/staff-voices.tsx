import { useSpeech } from '../../parts/setting.tsx'
import type { Language } from '../../words/languages.ts'
import type { Speaker } from './use-voices.ts'

/** For each language the voice that reads it, or why the button that reads is hidden. */
export function StaffVoices({
  languages,
  speakers
}: {
  languages: readonly Language[]
  speakers: ReadonlyMap<string, Speaker>
}) {
  const { words } = useSpeech()
  return (
    <section class="staff-voices">
      <h2>{words.t('ui:staff.voices')}</h2>
      <p class="staff-how">{words.t('ui:staff.voices-how')}</p>
      <dl>
        {languages.map(({ tag, name }) => {
          const speaker = speakers.get(tag)
          return (
            <div key={tag} data-voice={tag} data-holds={speaker !== undefined}>
              <dt>{name}</dt>
              <dd>{speaker?.name ?? words.t('ui:staff.no-voice', { language: name })}</dd>
            </div>
          )
        })}
      </dl>
    </section>
  )
}
