import { useEffect, useMemo, useState } from 'preact/hooks'
import type { Either } from '../evaluate/either.ts'
import type { Evaluation } from '../evaluate/evaluate.ts'
import type { Progress } from '../evaluate/progress.ts'
import type { Walk } from '../evaluate/walk.ts'
import { createSession } from '../machine/session.ts'
import { type Report, reportOn } from '../report/report.ts'
import type { Answer, Answers } from '../tree/answers.ts'
import { isAskedFromMemory } from '../tree/caution.ts'
import { EMERGENCY, emergenciesTold } from '../tree/emergency.ts'
import type { Observation, SignsObservation } from '../tree/observation.ts'
import type { Tree } from '../tree/tree.ts'
import { emergencyTold, withoutEmergency } from './emergency-told.ts'
import { type ToldOutcome, tellOf } from './said-twice.ts'
import { useSetting } from './setting.tsx'

/** One caller's walk as every place shows it. */
export interface WalkInHand {
  /** What the answers come to. */
  readonly evaluation: Evaluation
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
  /** Asked together with the question, under one answer that rules out both. */
  readonly sweptWith: SignsObservation | null
  /** Its signs are listed at once: one line over them was answered with more than a no. */
  readonly listed: boolean
  /** Asked from memory: nobody handles a jar under pressure, not even to answer. */
  readonly recalled: boolean
  readonly progress: Progress
  /** Of a finished walk, and of one whose outcome is told before the last question. */
  readonly report: Report | null
  readonly told: ToldOutcome | null
  readonly emergency: boolean
  /** The outcome is told before the last question: nothing still open could change it. */
  readonly early: boolean
  /** Whether anything was answered or changed since the walk was opened. */
  readonly moved: boolean
  answer(observation: string, answer: Answer): void
  /** Tells an answer without leaving the question or outcome shown. */
  replace(observation: string, answer: Answer): void
  /** Answers what is asked together. */
  answerTogether(answers: Answers): void
  /** Lists the signs of all that is asked together, one screen after the other. */
  listTogether(): void
  withdraw(observation: string): void
  /** Tells the quantities from which an observation is worked out, in place of a direct answer to it. */
  workOut(observation: string, inputs: Answers): void
  /** Tells a whole set of answers in place of all that was told, and what in it contradicts itself. */
  retell(answers: Answers, either?: readonly Either[], stays?: boolean): void
  /** Shows an earlier question again; null returns to the walk. */
  change(observation: string | null): void
  /** Tells the outcome before the last question; heard only once it is certain. */
  stop(): void
  /** The question before the one shown; null on the first. */
  readonly before: string | null
  /** The question whose answer is an emergency. */
  readonly emergencyAt: string | null
  /** Untells what is an emergency, and asks for it again. */
  takeBack(): void
}

/** Opens a walk with the answers it starts from, and follows it. */
export function useWalk(start: Answers, either: readonly Either[] = NONE): WalkInHand {
  const setting = useSetting()
  const { tree, office, today } = setting
  const session = useMemo(() => createSession(tree, start, either), [tree, start])
  const [, redraw] = useState(0)
  const [listed, setListed] = useState<readonly string[]>([])
  useEffect(() => session.subscribe(() => redraw(n => n + 1)), [session])

  const evaluation = session.evaluation()
  const shows = session.shows()
  const { answers, walk: walked, asked, progress } = evaluation
  const changing = session.changing()
  const shown = shows === 'stopped' ? null : (changing ?? walked.asks?.observation ?? null)
  const place = shown === null ? asked.length : asked.indexOf(shown)
  const report = useMemo(
    () =>
      walked.finished || shows === 'stopped'
        ? reportOn(evaluation, office, today, shows === 'stopped')
        : null,
    [evaluation, shows, office, today]
  )
  const sentences = useMemo(
    () => (report === null ? null : tellOf(setting, report)),
    [report, setting]
  )
  const [emergency] = emergenciesTold(tree, answers)
  const emergencyAt = emergency?.observation ?? raisedAt(walked, EMERGENCY)
  const question = shown === null ? null : (tree.observations[shown] ?? null)
  const along = shows === 'asking' && !listed.includes(shown ?? '') ? evaluation.sweptWith : null
  return {
    evaluation,
    answers,
    given: session.told(),
    walked,
    asked,
    question,
    recalled:
      question !== null &&
      question.about !== 'person' &&
      isAskedFromMemory(tree, walked.outcome.container),
    changing: shows === 'changing',
    sweptWith: along,
    listed: listed.includes(shown ?? ''),
    progress,
    report,
    told: sentences,
    emergency: shows === 'emergency',
    early: shows === 'stopped',
    moved: session.moved(),
    // What was told before is replaced whole: a mark taken off is off.
    answer: session.replace,
    replace: session.add,
    answerTogether: answers => session.retell({ ...session.told(), ...answers }),
    listTogether: () => setListed([question, along].flatMap(each => each?.id ?? [])),
    withdraw: session.withdraw,
    workOut(observation, inputs) {
      const { [observation]: _, ...rest } = session.told()
      session.retell({ ...rest, ...inputs })
    },
    retell: session.retell,
    change: observation => (observation === null ? session.goOn() : session.change(observation)),
    stop: session.stop,
    before: asked[(place < 0 ? asked.length : place) - 1] ?? null,
    emergencyAt,
    takeBack() {
      session.retell(withoutEmergency(session.told(), emergencyTold(tree, answers, walked)))
      if (emergencyAt !== null) session.change(emergencyAt)
    }
  }
}

const NONE: readonly Either[] = []

/** Makes what every walk of a tree needs and keeps, so that its first answer does not wait for it. */
export const prepareWalk = (tree: Tree): void => void createSession(tree).evaluation().progress

/** The observation whose answer last raised a verdict on a walk. */
const raisedAt = (walked: Walk, verdict: string): string | null =>
  walked.trail.filter(({ raised }) => raised.includes(verdict)).at(-1)?.observation ?? null
