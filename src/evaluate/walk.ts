import type { Answer, Answers } from '../tree/answers.ts'
import { join, NOTHING_YET, type Outcome } from '../tree/caution.ts'
import { decide } from '../tree/decide.ts'
import { EMERGENCY, emergenciesTold } from '../tree/emergency.ts'
import { must } from '../tree/must.ts'
import type { Question, Tree } from '../tree/tree.ts'

/** One question passed on a walk, with the answer that decided it and its sources. */
export interface Step {
  readonly question: string
  readonly observation: string
  readonly answer: Answer | undefined
  readonly because: readonly string[]
  /** The verdicts that the answer raised or ended with. */
  readonly raised: readonly string[]
  /** The same observation was read before on this walk: nothing was asked anew. */
  readonly again: boolean
  /** The observation that settled this one, and its answer. */
  readonly settledBy?: { readonly observation: string; readonly answer: Answer | undefined }
}

/** Where the answers lead: a trail, and either an outcome or the next thing to ask. */
export interface Walk {
  readonly finished: boolean
  readonly asks: { readonly question: string; readonly observation: string } | null
  readonly trail: readonly Step[]
  /** Final when finished; until then what has been raised so far. */
  readonly outcome: Outcome
}

/**
 * Follows the answers from the start: every question whose observation is told, stopping
 * at the first that is not.
 *
 * This is the reference meaning of a tree. The machine, the diagrams and every printed form
 * are held to it by tests; change it only together with the trees' authors.
 */
export function walk(tree: Tree, answers: Answers): Walk {
  const emergencies = emergenciesTold(tree, answers)
  if (emergencies.length > 0) {
    const asked = [...new Set(emergencies.map(({ question }) => question))]
    const outcome = emergencies.reduce((so, { effect }) => join(tree, so, effect), NOTHING_YET)
    const trail = asked.map(id =>
      stepOf(must(tree.questions[id], 'question'), answers, [EMERGENCY], [])
    )
    // Container and batch stay unspoken: the jar is judged on a second walk, if at all.
    return {
      finished: true,
      asks: null,
      trail,
      outcome: { ...outcome, container: null, batch: null }
    }
  }
  let outcome = NOTHING_YET
  const trail: Step[] = []
  let id = tree.start
  for (;;) {
    const question = must(tree.questions[id], 'question')
    const decision = decide(tree, question, answers)
    if (decision === undefined) {
      return { finished: false, asks: { question: id, observation: question.asks }, trail, outcome }
    }
    const { leads, raise } = decision.branch
    const raised = 'end' in leads ? [...raise, leads.end] : raise
    trail.push(stepOf(question, answers, raised, trail, decision.settledBy))
    if ('end' in leads) {
      return {
        finished: true,
        asks: null,
        trail,
        outcome: join(tree, outcome, decision.branch, leads.end)
      }
    }
    outcome = join(tree, outcome, decision.branch)
    id = leads.to
  }
}

/** What a walk notes of a question that it passes. */
export function stepOf(
  question: Question,
  answers: Answers,
  raised: readonly string[],
  before: readonly Step[],
  settledBy?: string
): Step {
  return {
    question: question.id,
    observation: question.asks,
    answer: answers[question.asks],
    because: question.because,
    raised,
    again: before.some(step => step.observation === question.asks),
    ...(settledBy !== undefined && {
      settledBy: { observation: settledBy, answer: answers[settledBy] }
    })
  }
}
