import { useMemo, useState } from 'preact/hooks'
import type { OfficePack } from '../../office/office-pack.ts'
import type { Answers } from '../../tree/answers.ts'
import { carriedOver } from '../../tree/tell.ts'
import type { Language } from '../../words/languages.ts'
import type { Catalogue, Openers } from '../opening/bundle.ts'
import { settingOf } from '../opening/setting-of.ts'
import { speechIn, type TextsByTag } from '../opening/speech.ts'
import { useTree } from '../opening/use-tree.ts'
import { withdrawnIn } from '../opening/withdrawn-in.ts'
import { After } from '../parts/after.tsx'
import { Before } from '../parts/before.tsx'
import { SettingProvider, SpeechProvider } from '../parts/setting.tsx'
import { WalkScreen } from '../parts/walk-screen.tsx'
import { IdleWarning } from './idle-warning.tsx'
import { TakeHome } from './take-home.tsx'
import { useSitting } from './use-sitting.ts'

const NOTHING = {}

/** One visitor's sitting, from the choice of a ferment on. All of it is here, and goes with it. */
export function Visit({
  catalogue,
  openers,
  languages,
  texts,
  language,
  office,
  today,
  onLanguage,
  onGone
}: {
  catalogue: Catalogue
  openers: Openers
  languages: readonly Language[]
  texts: TextsByTag
  language: string
  office: OfficePack | null
  today: Date
  onLanguage: (tag: string) => void
  /** The visitor has gone, or says so. */
  onGone: () => void
}) {
  const [tree, setTree] = useState<string | null>(null)
  const [kept, setKept] = useState<Answers>(NOTHING)
  const { left, extend } = useSitting(onGone)
  // Every language is there from the start: changing it must not interrupt a walk.
  const opened = useTree(tree === null ? undefined : openers.trees[tree], Object.keys(texts))
  const ready = opened !== null && opened !== 'failed' ? opened : null
  const speech = useMemo(() => ({ ...speechIn(texts, language), dials: false }), [texts, language])
  const setting = useMemo(
    () =>
      ready && {
        ...settingOf(
          ready,
          { tag: Object.hasOwn(ready.texts, language) ? language : ready.tag, texts },
          office,
          today
        ),
        dials: false
      },
    [ready?.bundle, ready?.texts, ready?.drawings, texts, language, office, today]
  )
  // One and the same until something else was told: a new set would begin the walk anew.
  const carried = useMemo(
    () => (ready === null ? NOTHING : carriedOver(ready.bundle.tree, kept)),
    [ready?.bundle, kept]
  )
  const shared = { languages, onLanguage, quiet: false }
  return (
    <>
      {setting === null ? (
        <Before
          {...shared}
          speech={speech}
          trees={tree === null || opened === 'failed' ? catalogue.trees : null}
          withdrawn={withdrawnIn(catalogue, tree)}
          notice={opened === 'failed' ? 'ui:not-loaded' : null}
          office={office}
          today={today}
          onChoose={setTree}
          onLeave={tree === null ? onGone : () => setTree(null)}
        />
      ) : (
        <SettingProvider value={setting}>
          <WalkScreen
            {...shared}
            start={carried}
            startOverInEmergency
            notice={null}
            onLeave={() => {
              setKept(NOTHING)
              setTree(null)
            }}
            onSwitch={
              catalogue.trees.length > 1
                ? told => {
                    setKept(told)
                    setTree(null)
                  }
                : undefined
            }
            onStartOver={onGone}
            underOutcome={walk => (
              <>
                <TakeHome walk={walk} onDone={onGone} />
                <After answers={walk.answers} onAnswer={walk.replace} onInputs={walk.workOut} />
              </>
            )}
          />
        </SettingProvider>
      )}
      {left !== null && (
        <SpeechProvider value={speech}>
          <IdleWarning left={left} onExtend={extend} />
        </SpeechProvider>
      )}
    </>
  )
}
