import { useEffect, useMemo, useState } from 'preact/hooks'
import { createSession } from '../../machine/session.ts'
import { type Report, reportOn, type WalkReport } from '../../office/report.ts'
import type { Answer, Answers } from '../../tree/answers.ts'
import { isLeft } from '../../tree/caution.ts'
import { EMERGENCY, emergenciesTold } from '../../tree/emergency.ts'
import type { Observation } from '../../tree/observation.ts'
import { askedOn, type Progress, progressOf } from '../../tree/progress.ts'
import { type Walk, walk } from '../../tree/walk.ts'
import { cautionsOf } from '../../words/beside.ts'
import { say } from '../../words/say.ts'
import { emergencyTold, withoutEmergency } from './emergency-told.ts'
import type { Told } from './outcome.tsx'
import { type Setting, useSetting } from './setting.tsx'

/** One caller's walk as every place shows it. */
export interface WalkInHand {
  /** With what could be worked out from what was told. */
  readonly answers: Answers
  /** As told: what a link may hold. */
  readonly given: Answers
  readonly walked: Walk
  /** The observations asked so far, in order. */
  readonly asked: readonly string[]
  /** What the screen asks for, the next question or an earlier one being changed; null at the outcome. */
  readonly question: Observation | null
  readonly changing: boolean
  /** Asked from memory: nobody goes back to a jar that may burst, not even to answer. */
  readonly recalled: boolean
  readonly progress: Progress
  readonly report: WalkReport | null
  readonly told: Told | null
  readonly emergency: boolean
  /** Whether anything was answered or changed since the walk was opened. */
  readonly moved: boolean
  answer(observation: string, answer: Answer): void
  /** Tells an answer without leaving the question or outcome shown. */
  replace(observation: string, answer: Answer): void
  withdraw(observation: string): void
  /** Tells the quantities from which an observation is worked out, in place of a direct answer to it. */
  workOut(observation: string, inputs: Answers): void
  /** Tells a whole set of answers in place of all that was told. */
  retell(answers: Answers): void
  /** Shows an earlier question again; null returns to the walk. */
  change(observation: string | null): void
  /** The question before the one shown; null on the first. */
  readonly before: string | null
  /** The question whose answer is an emergency. */
  readonly emergencyAt: string | null
  /** Untells what is an emergency, and asks for it again. */
  takeBack(): void
}

/** Opens a walk with the answers it starts from, and follows it. */
export function useWalk(start: Answers): WalkInHand {
  const setting = useSetting()
  const { tree, office, today } = setting
  const session = useMemo(() => createSession(tree, start), [tree, start])
  const [, redraw] = useState(0)
  const [changing, setChanging] = useState<string | null>(null)
  const [moved, setMoved] = useState(false)
  useEffect(() => session.subscribe(() => redraw(n => n + 1)), [session])

  const answers = session.answers()
  const given = session.told()
  const walked = walk(tree, answers)
  const asked = askedOn(tree, walked)
  const shown = changing ?? walked.asks?.observation ?? null
  const at = shown === null ? asked.length : asked.indexOf(shown)
  const report = walked.finished ? reportOn(tree, answers, office, today) : null
  const [emergency] = emergenciesTold(tree, answers)

  const change = (observation: string | null) => {
    setMoved(true)
    setChanging(observation)
  }
  const emergencyAt = emergency?.observation ?? raisedAt(walked, EMERGENCY)
  const question = shown === null ? null : (tree.observations[shown] ?? null)
  return {
    answers,
    given,
    walked,
    asked,
    question,
    recalled: question?.about === 'batch' && isLeft(tree, walked.outcome.container),
    changing: changing !== null,
    progress: progressOf(tree, answers, walked),
    report,
    told: report === null ? null : tellOf(setting, report),
    emergency: report?.outcome.person === EMERGENCY && changing === null,
    moved,
    answer(observation, told) {
      change(null)
      // What was told before is replaced whole: a mark taken off is off.
      session.replace(observation, told)
    },
    replace: (observation, told) => session.replace(observation, told),
    withdraw(observation) {
      change(null)
      session.withdraw(observation)
    },
    workOut(observation, inputs) {
      change(null)
      const { [observation]: _, ...rest } = session.told()
      session.retell({ ...rest, ...inputs })
    },
    retell(told) {
      change(null)
      session.retell(told)
    },
    change,
    before: asked[(at < 0 ? asked.length : at) - 1] ?? null,
    emergencyAt,
    takeBack() {
      session.retell(withoutEmergency(given, emergencyTold(tree, answers, walked)))
      change(emergencyAt)
    }
  }
}

/** The observation whose answer last raised a verdict on a walk. */
const raisedAt = (walked: Walk, verdict: string): string | null =>
  walked.trail.filter(({ raised }) => raised.includes(verdict)).at(-1)?.observation ?? null

/** Words a finished report in the language of the screen, and in the one that stands beside it. */
export function tellOf({ words, second, sources }: Setting, report: Report): Told {
  const said = say(report, words, sources)
  if (second === null) return { said, beside: null }
  const beside = say(report, second.words, sources)
  return { said, beside: second.shows === 'everything' ? beside : cautionsOf(beside) }
}
