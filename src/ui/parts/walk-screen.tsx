import type { ComponentChildren } from 'preact'
import { useEffect } from 'preact/hooks'
import type { Answers as AnswerSet } from '../../tree/answers.ts'
import type { Language } from '../../words/languages.ts'
import { Emergency } from './emergency.tsx'
import { Foot } from './foot.tsx'
import { Masthead } from './masthead.tsx'
import { Outcome } from './outcome.tsx'
import { QuestionInHand } from './question-in-hand.tsx'
import { useSetting } from './setting.tsx'
import { StringOfMouths } from './string-of-mouths.tsx'
import { useWalk, type WalkInHand } from './use-walk.ts'

/** One caller's walk, a screen at a time: a question or the outcome, with the walk so far beside it. */
export function WalkScreen({
  start,
  notice,
  quiet = true,
  languages = [],
  onLanguage = () => undefined,
  onLeave,
  onStartOver = onLeave,
  underOutcome,
  foot
}: {
  start: AnswerSet
  notice: string | null
  /** The page has only just loaded: the focus stays where the reader put it. */
  quiet?: boolean
  languages?: readonly Language[]
  onLanguage?: (tag: string) => void
  /** Back from the first question. */
  onLeave: () => void
  onStartOver?: () => void
  /** What this place offers under an outcome. */
  underOutcome?: (walk: WalkInHand) => ComponentChildren
  /** What this place shows under the foot. */
  foot?: ComponentChildren
}) {
  const { tree, words, office, today } = useSetting()
  const walk = useWalk(start)
  const { question, told, answers, asked, moved, before } = walk
  const title = words.t(`${tree.id}:title`)
  const heading = question ? words.t(`observations:${question.id}.ask`) : words.t('ui:outcome')
  useEffect(() => {
    document.title = `${heading} · ${title} · Jarside`
  }, [heading, title])

  if (walk.emergency && told !== null) {
    return (
      <main class="screen screen-emergency">
        <Emergency {...told} onTakeBack={() => walk.change(walk.emergencyAt)} />
      </main>
    )
  }
  return (
    <div class="screen">
      <Masthead
        title={title}
        draft={tree.review.state === 'draft'}
        languages={languages}
        onLanguage={onLanguage}
        onBack={before === null ? onLeave : () => walk.change(before)}
        onStartOver={onStartOver}
      />
      <StringOfMouths
        asked={asked}
        answers={answers}
        current={question?.id ?? null}
        onChange={walk.change}
      />
      <main class="main">
        {notice !== null && !moved && <p class="notice">{notice}</p>}
        {question !== null && <QuestionInHand walk={walk} quiet={quiet && !moved} />}
        {question === null && told !== null && (
          <>
            <Outcome {...told} quiet={quiet && !moved} />
            {underOutcome?.(walk)}
          </>
        )}
      </main>
      <Foot office={office} today={today} />
      {foot}
    </div>
  )
}
