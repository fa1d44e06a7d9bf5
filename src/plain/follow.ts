import { type Answer, type Answers, isInterval, measureOf, signsOf } from '../tree/answers.ts'
import { effectiveChoice } from '../tree/effective.ts'
import { settlersOf } from '../tree/linked.ts'
import { at, must } from '../tree/must.ts'
import type { Question, Tree } from '../tree/tree.ts'
import { isOnlyRecalled, settledBy } from './exits.ts'
import type { Exit, On, PlainWalk, ReadingRun, Stop, Turn, When } from './stop.ts'

/** Where somebody comes who follows the links: the end, the exits taken, and what was asked of the answers. */
export interface Followed {
  readonly end: number
  readonly exits: readonly Exit[]
  /** By question what was answered at it. */
  readonly said: ReadonlyMap<string, Answer>
  /** Of the answers what a stop asked; of a screen only signs that somebody is asked about. */
  readonly asked: Answers
}

/** Follows the links as somebody with these answers would; what is not among them counts as not sure. */
export function follow(tree: Tree, walk: PlainWalk, answers: Answers): Followed {
  const exits: Exit[] = []
  const said = new Map<string, Answer>()
  const asked: Record<string, Answer> = {}
  for (let number = 0; ; ) {
    const stop = at(walk.stops, number)
    const question = must(tree.questions[stop.question], 'question')
    const silent = isOnlyRecalled(tree, question) && !Object.hasOwn(asked, question.asks)
    const first = silent ? saysNothing(question) : askedOf(tree, question.asks, answers)
    if (!silent) asked[question.asks] = first
    const answer = saidAt(tree, stop, asked, first)
    said.set(question.id, answer)
    const exit = must(
      stop.exits.find(({ on }) => fits(on, answer)),
      'exit'
    )
    exits.push(exit)
    if ('end' in exit.leads) return { end: exit.leads.end, exits, said, asked }
    number = exit.leads.stop
  }
}

/** Whether somebody said what a note goes with. A second answer stands in place of the first. */
export function isSaid(tree: Tree, { said }: Followed, { question, on }: When): boolean {
  const answer = said.get(question)
  if (answer === undefined || !fits(on, answer)) return false
  const { asks } = must(tree.questions[question], 'question')
  // Of two answers the second counts: "not sure" is no longer what was said.
  return (
    answer !== 'unsure' ||
    !isSettled(
      tree,
      said,
      settlersOf(tree, asks).map(({ id }) => id)
    )
  )
}

/** Whether a second answer says something. */
function isSettled(tree: Tree, said: Followed['said'], seconds: readonly string[]): boolean {
  return [...said].some(
    ([id, answer]) => seconds.includes(tree.questions[id]?.asks ?? '') && answer !== 'unsure'
  )
}

/** Whether an answer is among those that an exit, or the reason for a note, stands for. */
export function fits(on: On, said: Answer): boolean {
  switch (on.kind) {
    case 'any':
      return true
    case 'answers':
      return typeof said === 'string' && on.among.includes(said)
    case 'signs':
      return worstOf(on.signs, said) === on.value
    case 'turn':
      return (
        (on.taken === null || takes(on.taken, said)) && !on.before.some(one => takes(one, said))
      )
    case 'readings':
      return isInterval(said) && on.runs.some(run => isIn(run, said.reading, said.instrument))
  }
}

const takes = ({ signs, orUnsure }: Turn, said: Answer): boolean => {
  const worst = worstOf(signs, said)
  return worst === 'yes' || (orUnsure && worst === 'unsure')
}

const isIn = (
  { instrument, from, to }: ReadingRun,
  reading: number,
  by: string | undefined
): boolean => instrument === (by ?? null) && from <= reading && reading <= to

function worstOf(signs: readonly string[], said: Answer): 'yes' | 'unsure' | 'no' {
  const marks = typeof said === 'object' && !isInterval(said) ? said : {}
  const values = signs.map(sign => marks[sign] ?? 'no')
  return values.includes('yes') ? 'yes' : values.includes('unsure') ? 'unsure' : 'no'
}

/** What stands for an answer of somebody who was not asked. */
const saysNothing = ({ kind }: Question): Answer => (kind === 'signs' ? {} : 'unsure')

/** What a reader answers at a stop: of what can be settled, the second answer once there is one. */
function saidAt(tree: Tree, { question: id }: Stop, asked: Answers, answer: Answer): Answer {
  const question = must(tree.questions[id], 'question')
  const observation = tree.observations[question.asks]
  if (observation?.kind !== 'choice' || settledBy(tree, question) !== undefined) return answer
  const settled = settlersOf(tree, question.asks).some(one => Object.hasOwn(asked, one.id))
  return settled ? (effectiveChoice(tree, observation, asked)?.answer ?? answer) : answer
}

/** The answer to an observation as it is asked on paper. */
function askedOf(tree: Tree, id: string, answers: Answers): Answer {
  const observation = must(tree.observations[id], 'observation')
  if (observation.kind === 'measure') return measureOf(answers, id) ?? 'unsure'
  if (observation.kind === 'choice') {
    const answer = answers[id]
    return typeof answer === 'string' ? answer : 'unsure'
  }
  const signs = signsOf(answers, id)
  return Object.fromEntries(
    observation.signs
      .filter(({ volunteered }) => !volunteered)
      .map(sign => [sign.id, signs[sign.id] ?? 'unsure'])
  )
}
