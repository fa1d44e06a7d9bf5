import type { ComponentChildren } from 'preact'
import { useEffect } from 'preact/hooks'
import { outcomeToShare } from '../addresses/outcome-address.ts'
import { homeOf, sheetAddress } from '../addresses/sheet-address.ts'
import type { Evaluation } from '../evaluate/evaluate.ts'
import type { Answers as AnswerSet } from '../tree/answers.ts'
import { askKey } from '../words/ask-key.ts'
import { Emergency } from './emergency.tsx'
import { emergencyTold } from './emergency-told.ts'
import type { LanguageChoice } from './language-switch.tsx'
import { Outcome } from './outcome.tsx'
import { PrintedSheet } from './printed-sheet.tsx'
import { QuestionInHand } from './question-in-hand.tsx'
import { Screen } from './screen.tsx'
import { useSetting } from './setting.tsx'
import { StringOfMouths } from './string-of-mouths.tsx'
import { SwitchTree } from './switch-tree.tsx'
import { useWalk, type WalkInHand } from './use-walk.ts'

/** One caller's walk, a screen at a time: a question or the outcome, with the walk so far beside it. */
export function WalkScreen({
  start,
  notice,
  quiet = true,
  ownsPage = true,
  startOverInEmergency = false,
  onLeave,
  onStartOver = onLeave,
  onSwitch,
  onOutcome,
  underOutcome,
  aids,
  ...frame
}: Partial<LanguageChoice> & {
  start: AnswerSet
  notice: string | null
  /** The page has only just loaded: the focus stays where the reader put it. */
  quiet?: boolean
  /** The page is this walk's alone: its title, its main part, and what it prints. */
  ownsPage?: boolean
  /** An unattended screen that shows an emergency can be left to the next person. */
  startOverInEmergency?: boolean
  /** Back from the first question; null where nothing stands before it. */
  onLeave: (() => void) | null
  onStartOver?: (() => void) | null
  /** Chooses another ferment with what was told so far; left out where there is only one. */
  onSwitch?: ((answers: AnswerSet) => void) | undefined
  /** Called when the walk comes to an outcome, or to an emergency. */
  onOutcome?: ((evaluation: Evaluation) => void) | undefined
  /** What this place offers under an outcome. */
  underOutcome?: (walk: WalkInHand) => ComponentChildren
  /** What helps to read whatever is shown. */
  aids?: (walk: WalkInHand) => ComponentChildren
}) {
  const { tree, words, office, today } = useSetting()
  const walk = useWalk(start)
  const { question, told, report, answers, asked, moved, before } = walk
  const title = words.t(`${tree.id}:title`)
  const heading = words.t(question ? askKey(words, question.id, walk.recalled) : 'ui:outcome')
  useEffect(() => {
    if (ownsPage) document.title = `${heading} · ${title} · Jarside`
  }, [heading, title])
  const isTold = told !== null
  useEffect(() => {
    if (isTold) onOutcome?.(walk.evaluation)
  }, [isTold])
  const Main = ownsPage ? 'main' : 'div'

  if (walk.emergency && told !== null) {
    return (
      <Main class="screen screen-emergency">
        <Emergency
          {...told}
          understood={emergencyTold(tree, answers, walk.walked)}
          onTakeBack={walk.takeBack}
          onStartOver={startOverInEmergency ? onStartOver : null}
          aids={aids?.(walk)}
        />
      </Main>
    )
  }
  return (
    <>
      <Screen
        {...frame}
        title={title}
        draft={tree.review.state === 'draft'}
        onBack={before === null ? onLeave : () => walk.change(before)}
        onStartOver={onStartOver}
        aids={aids?.(walk)}
        main={Main}
        office={office}
        today={today}
        more={question !== null && onSwitch && <SwitchTree onSwitch={() => onSwitch(walk.given)} />}
        under={
          <StringOfMouths
            asked={asked}
            answers={answers}
            current={question?.id ?? null}
            onChange={walk.change}
            quiet={quiet && !moved}
          />
        }
      >
        {notice !== null && !moved && <p class="notice">{notice}</p>}
        {question !== null && <QuestionInHand walk={walk} quiet={quiet && !moved} />}
        {question === null && told !== null && (
          <>
            <Outcome {...told} quiet={quiet && !moved} />
            {underOutcome?.(walk)}
          </>
        )}
      </Screen>
      {ownsPage && question === null && told !== null && report !== null && (
        <PrintedSheet
          report={report}
          address={() => {
            const shared = outcomeToShare(tree, walk)
            return language => sheetAddress(tree, shared, language, homeOf(office))
          }}
        />
      )}
    </>
  )
}
