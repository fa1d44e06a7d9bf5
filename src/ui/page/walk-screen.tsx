import { useEffect, useMemo, useState } from 'preact/hooks'
import { createSession } from '../../machine/session.ts'
import { reportOn } from '../../office/report.ts'
import type { Answer, Answers as Told } from '../../tree/answers.ts'
import { EMERGENCY, emergenciesTold } from '../../tree/emergency.ts'
import { askedOn, progressOf } from '../../tree/progress.ts'
import { walk } from '../../tree/walk.ts'
import { alarmsOf } from '../../words/alarms.ts'
import { say } from '../../words/say.ts'
import { Alarms } from '../parts/alarms.tsx'
import { Answers } from '../parts/answers.tsx'
import { Emergency } from '../parts/emergency.tsx'
import { Foot } from '../parts/foot.tsx'
import { Masthead } from '../parts/masthead.tsx'
import { Outcome } from '../parts/outcome.tsx'
import { QuestionFrame } from '../parts/question-frame.tsx'
import { useSetting } from '../parts/setting.tsx'
import { StringOfMouths } from '../parts/string-of-mouths.tsx'
import { Actions } from './actions.tsx'
import { After } from './after.tsx'

/** One caller's walk: a question or the outcome, with the walk so far beside it. */
export function WalkScreen({
  start,
  notice,
  quiet = true,
  onLeave
}: {
  start: Told
  notice: string | null
  /** The page has only just loaded: the focus stays where the reader put it. */
  quiet?: boolean
  onLeave: () => void
}) {
  const { tree, words, office, today, sources } = useSetting()
  const session = useMemo(() => createSession(tree, start), [tree, start])
  const [, redraw] = useState(0)
  const [changing, setChanging] = useState<string | null>(null)
  const [moved, setMoved] = useState(false)
  useEffect(() => session.subscribe(() => redraw(n => n + 1)), [session])

  const answers = session.answers()
  const walked = walk(tree, answers)
  const asked = askedOn(tree, walked)
  const shown = changing ?? walked.asks?.observation ?? null
  const title = words.t(`${tree.id}:title`)
  const question = shown === null ? null : (tree.observations[shown] ?? null)
  const heading = question ? words.t(`observations:${question.id}.ask`) : words.t('ui:outcome')
  useEffect(() => {
    document.title = `${heading} · ${title} · Jarside`
  }, [heading, title])

  const replace = (observation: string, told: Answer) => {
    // What was told before is replaced whole: a mark taken off is off.
    session.replace(observation, told)
  }
  const answer = (observation: string, told: Answer) => {
    setMoved(true)
    setChanging(null)
    replace(observation, told)
  }
  const change = (observation: string | null) => {
    setMoved(true)
    setChanging(observation)
  }
  const at = shown === null ? asked.length : asked.indexOf(shown)
  const before = asked[(at < 0 ? asked.length : at) - 1]
  const back = before === undefined ? onLeave : () => change(before)

  const report = walked.finished ? reportOn(tree, answers, office, today) : null
  const said = report === null ? null : say(report, words, sources)
  if (said !== null && report?.walk.outcome.person === EMERGENCY && changing === null) {
    const [sign] = emergenciesTold(tree, answers)
    return (
      <main class="screen screen-emergency">
        <Emergency said={said} onTakeBack={() => change(sign?.observation ?? null)} />
      </main>
    )
  }
  const progress = progressOf(tree, answers, walked)
  return (
    <div class="screen">
      <Masthead
        words={words}
        title={title}
        draft={tree.review.state === 'draft'}
        onBack={back}
        onStartOver={onLeave}
      />
      <StringOfMouths asked={asked} answers={answers} current={shown} onChange={change} />
      <main class="main">
        {notice !== null && !moved && <p class="notice">{notice}</p>}
        {question !== null && <Alarms alarms={alarmsOf(tree, walked.outcome, words)} />}
        {question !== null && (
          <QuestionFrame
            observation={question.id}
            question={walked.asks?.question ?? null}
            quiet={quiet && !moved}
            progress={changing === null ? progressText(words.t, progress) : words.t('ui:changing')}
          >
            <Answers
              observation={question}
              told={answers}
              onAnswer={told => answer(question.id, told)}
            />
          </QuestionFrame>
        )}
        {question === null && said !== null && (
          <>
            <Outcome said={said} quiet={quiet && !moved} />
            <Actions said={said} answers={answers} />
            <After answers={answers} onAnswer={replace} />
          </>
        )}
      </main>
      <Foot words={words} office={office} today={today} />
    </div>
  )
}

function progressText(
  t: (key: `${string}:${string}`, values?: Record<string, number>) => string,
  { question, atMostMore }: { readonly question: number; readonly atMostMore: number }
): string {
  const more = atMostMore === 0 ? t('ui:the-last') : t('ui:at-most-more', { count: atMostMore })
  return `${t('ui:question', { number: question })}, ${more}`
}
