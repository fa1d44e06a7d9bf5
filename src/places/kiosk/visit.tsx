import { useMemo } from 'preact/hooks'
import type { Evaluation } from '../../evaluate/evaluate.ts'
import type { Stay } from '../../machine/open-stay.ts'
import type { OfficePack } from '../../office/office-pack.ts'
import type { Catalogue, Openers } from '../../opening/bundle.ts'
import { settingOf } from '../../opening/setting-of.ts'
import { speechIn, type TextsByTag } from '../../opening/speech.ts'
import { useTree } from '../../opening/use-tree.ts'
import { withdrawnIn } from '../../opening/withdrawn-in.ts'
import { After } from '../../parts/after.tsx'
import { Before } from '../../parts/before.tsx'
import { SettingProvider, SpeechProvider } from '../../parts/setting.tsx'
import { Text } from '../../parts/text.tsx'
import { WalkScreen } from '../../parts/walk-screen.tsx'
import type { Answers } from '../../tree/answers.ts'
import { carriedOver } from '../../tree/tell.ts'
import type { Language } from '../../words/languages.ts'
import { Aids, type AidsInHand } from './aids.tsx'
import { aloudBefore, aloudIn } from './aloud-screen.ts'
import { IdleWarning } from './idle-warning.tsx'
import { STALE_DAYS } from './settings.ts'
import { TakeHome } from './take-home.tsx'

const NOTHING = {}

/** One visitor, from the choice of a ferment on. What is typed and opened is here alone, and goes with it. */
export function Visit({
  catalogue,
  openers,
  languages,
  texts,
  language,
  tree,
  chosen,
  told,
  left,
  office,
  today,
  outdated,
  onOutcome,
  aids,
  send
}: {
  catalogue: Catalogue
  openers: Openers
  languages: readonly Language[]
  texts: TextsByTag
  language: string
  /** The ferment chosen; null while the visitor chooses. */
  tree: string | null
  chosen: number
  /** What was told of the ferment chosen before. */
  told: Answers
  /** The seconds left while nobody seems to be there. */
  left: number | null
  office: OfficePack | null
  today: Date
  /** This device has not reached its server for long. */
  outdated: boolean
  onOutcome: (evaluation: Evaluation) => void
  aids: AidsInHand
  send: Stay['send']
}) {
  const leave = () => send({ type: 'leave' })
  const chooseAgain = (before: Answers) => send({ type: 'choose-again', told: before })
  // Every language is there from the start: changing it must not interrupt a walk.
  const opened = useTree(
    tree === null ? undefined : openers.trees[tree],
    Object.keys(texts),
    chosen
  )
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
        dials: false,
        atArmsLength: true
      },
    [ready?.bundle, ready?.texts, ready?.drawings, texts, language, office, today]
  )
  // One and the same until something else was told: a new set would begin the walk anew.
  const carried = useMemo(
    () => (ready === null ? NOTHING : carriedOver(ready.bundle.tree, told)),
    [ready?.bundle, told]
  )
  const onLanguage = (tag: string) => send({ type: 'speak', language: tag })
  const shared = { languages, onLanguage, quiet: false }
  const offered = tree === null || opened === 'failed' ? catalogue.trees : null
  const withdrawn = withdrawnIn(catalogue, tree)
  const outdatedText = outdated ? speech.words.t('ui:kiosk.outdated', { days: STALE_DAYS }) : null
  return (
    <>
      {setting === null ? (
        <Before
          {...shared}
          speech={speech}
          trees={offered}
          withdrawn={withdrawn}
          notice={opened === 'failed' ? 'ui:not-loaded' : null}
          office={office}
          today={today}
          aids={<Aids {...aids} screen={aloudBefore(offered, withdrawn, speech.words)} />}
          onChoose={id => send({ type: 'choose', tree: id })}
          onLeave={tree === null ? leave : () => chooseAgain(NOTHING)}
        />
      ) : (
        <SettingProvider value={setting}>
          <WalkScreen
            {...shared}
            start={carried}
            startOverInEmergency
            onOutcome={onOutcome}
            aids={walk => <Aids {...aids} screen={aloudIn(walk, setting, outdatedText)} />}
            notice={null}
            onLeave={() => chooseAgain(NOTHING)}
            onSwitch={catalogue.trees.length > 1 ? chooseAgain : undefined}
            onStartOver={leave}
            underOutcome={walk => (
              <>
                {outdated && (
                  <p class="notice">
                    <Text k="ui:kiosk.outdated" values={{ days: STALE_DAYS }} />
                  </p>
                )}
                <TakeHome walk={walk} onDone={leave} />
                <After answers={walk.answers} onAnswer={walk.replace} onInputs={walk.workOut} />
              </>
            )}
          />
        </SettingProvider>
      )}
      {left !== null && (
        <SpeechProvider value={speech}>
          <IdleWarning left={left} onExtend={() => send({ type: 'keep' })} />
        </SpeechProvider>
      )}
    </>
  )
}
