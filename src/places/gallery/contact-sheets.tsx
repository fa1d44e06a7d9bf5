import texts from 'virtual:jarside/contacts'
import { AreaField, LanguageField, LogBox, LogNumber } from '../../parts/log-fields.tsx'
import { NotSavedNotice } from '../../parts/not-saved-notice.tsx'
import type { Setting } from '../../parts/setting.tsx'
import type { LogInHand } from '../../parts/use-contact-log.ts'
import { wordsWith } from '../../words/words-with.ts'
import { type Sheet, type State, together } from './sheet.ts'

const nothing = () => undefined

/** What the desk and the log write down a contact with. */
export function contactSheets({ words, office }: Setting): readonly Sheet[] {
  const joined = wordsWith(words, texts, /^ui:contacts\./)
  const counties = office?.log?.counties ?? []
  const notSaved = (why: LogInHand['why'] & string): State => ({
    name: `not saved: ${why}`,
    setting: { words: joined },
    show: (
      <NotSavedNotice
        counties={counties}
        log={{
          unsaved: [],
          why,
          open: () => Promise.reject(new Error('the gallery keeps nothing')),
          save: async () => false,
          again: async () => false,
          letGo: nothing
        }}
      />
    )
  })
  return [
    ...together(
      ['log-fields'],
      [
        {
          name: 'fields of a record',
          setting: { words: joined },
          show: (
            <>
              <AreaField counties={counties} area={null} onChange={nothing} />
              <LanguageField language="es" onChange={nothing} />
              <LogNumber label="7" name="minutes" value="5" from={0} to={600} onChange={nothing} />
              <LogBox label="Sheet" name="sheet" checked={true} onChange={nothing} />
            </>
          )
        }
      ]
    ),
    ...together(['not-saved-notice'], [notSaved('full'), notSaved('blocked')])
  ]
}
