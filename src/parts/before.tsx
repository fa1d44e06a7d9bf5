import type { OfficePack } from '../office/office-pack.ts'
import type { Language } from '../words/languages.ts'
import type { TextKey } from '../words/text-key.ts'
import type { CatalogueEntry } from './catalogue-entry.ts'
import { Choose, type TreeChoice } from './choose.tsx'
import { Foot } from './foot.tsx'
import { Masthead } from './masthead.tsx'
import { type Speech, SpeechProvider } from './setting.tsx'
import { Withdrawn } from './withdrawn.tsx'

/** What stands before a walk: the choice of a ferment, or word that the chosen one is on its way. */
export function Before({
  speech,
  languages = [],
  onLanguage = () => undefined,
  languageLost = false,
  trees,
  withdrawn = null,
  notice,
  quiet,
  office,
  today,
  lookAlikes,
  onChoose,
  onLeave = null
}: {
  speech: Speech
  languages?: readonly Language[]
  onLanguage?: (tag: string) => void
  languageLost?: boolean
  /** What to choose from; null while the chosen one is opened. */
  trees: readonly TreeChoice[] | null
  /** The chosen tree, where it was withdrawn. */
  withdrawn?: CatalogueEntry | null
  notice: TextKey | null
  quiet: boolean
  office: OfficePack | null
  today: Date
  /** Where look-alikes stand side by side; left out where no other page is opened. */
  lookAlikes?: string
  onChoose: (tree: string) => void
  /** Back to what stands before the choice, where anything does. */
  onLeave?: (() => void) | null
}) {
  const { words } = speech
  return (
    <SpeechProvider value={speech}>
      <div class="screen">
        <Masthead
          title={null}
          draft={false}
          languages={languages}
          onLanguage={onLanguage}
          languageLost={languageLost}
          onBack={onLeave}
          onStartOver={onLeave}
        />
        <main class="main">
          {withdrawn ? (
            <Withdrawn tree={withdrawn.id} on={withdrawn.withdrawn ?? ''} quiet={quiet} />
          ) : trees === null ? (
            <p role="status">{words.t('ui:opening')}</p>
          ) : (
            <Choose
              trees={trees}
              notice={notice && words.t(notice)}
              quiet={quiet}
              lookAlikes={lookAlikes}
              onChoose={onChoose}
            />
          )}
        </main>
        <Foot office={office} today={today} />
      </div>
    </SpeechProvider>
  )
}
