import type { ComponentChildren } from 'preact'
import type { TextKey } from '../words/text-key.ts'
import type { CatalogueEntry } from './catalogue-entry.ts'
import { Choose, type TreeChoice } from './choose.tsx'
import type { MastheadProps } from './masthead.tsx'
import { Screen, type ScreenFrame } from './screen.tsx'
import { type Speech, SpeechProvider } from './setting.tsx'
import { Withdrawn } from './withdrawn.tsx'

/** What stands before a walk: the choice of a ferment, or word that the chosen one is on its way. */
export function Before({
  speech,
  trees,
  withdrawn = null,
  notice,
  quiet,
  above,
  below,
  onChoose,
  onLeave = null,
  ...frame
}: ScreenFrame &
  Pick<MastheadProps, 'aids'> & {
    speech: Speech
    /** What to choose from; null while the chosen one is opened. */
    trees: readonly TreeChoice[] | null
    /** The chosen tree, where it was withdrawn. */
    withdrawn?: CatalogueEntry | null
    notice: TextKey | null
    quiet: boolean
    /** The ways to other pages, before the choice and at its end; left out where none is opened. */
    above?: ComponentChildren
    below?: ComponentChildren
    onChoose: (tree: string) => void
    /** Back to what stands before the choice, where anything does. */
    onLeave?: (() => void) | null
  }) {
  const { words } = speech
  return (
    <SpeechProvider value={speech}>
      <Screen {...frame} title={null} draft={false} onBack={onLeave} onStartOver={onLeave}>
        {withdrawn ? (
          <Withdrawn tree={withdrawn.id} on={withdrawn.withdrawn ?? ''} quiet={quiet} />
        ) : trees === null ? (
          <p role="status">{words.t('ui:opening')}</p>
        ) : (
          <Choose
            trees={trees}
            notice={notice && words.t(notice)}
            quiet={quiet}
            above={above}
            below={below}
            onChoose={onChoose}
          />
        )}
      </Screen>
    </SpeechProvider>
  )
}
