import { type Answer, type Answers, isSigns } from '../tree/answers.ts'
import { branchesOf, reachedFrom } from '../tree/circuit.ts'
import { decide, isVolunteered } from '../tree/decide.ts'
import { linkedOf, settlersOf } from '../tree/linked.ts'
import { must } from '../tree/must.ts'
import type { Branch, Question, Tree } from '../tree/tree.ts'
import type { Walk } from './walk.ts'

/** The number of the question being asked, and how many more can follow it at the very most. */
export interface Progress {
  readonly question: number
  readonly atMostMore: number
}

/** The most things asked on any walk, from the start. */
export function mostScreens(tree: Tree): number {
  return stopsFrom(tree, {}, tree.start)
}

/** How far a walk has come. An upper bound: answers may rule out the longest way, never lengthen it. */
export function progressOf(tree: Tree, answers: Answers, walk: Walk): Progress {
  const longest = walk.asks ? stopsFrom(tree, answers, walk.asks.question) : 1
  return { question: askedOn(tree, walk).length + 1, atMostMore: longest - 1 }
}

/** The observations asked on a walk, in order, each once. */
export function askedOn(tree: Tree, walk: Walk): readonly string[] {
  const asked = walk.trail
    .filter(({ question, answer }) => {
      const passed = tree.questions[question]
      return stops(passed) || (passed !== undefined && wasAsked(tree, passed, answer))
    })
    // A settling question leaves the trail once its answer counts, but it was asked all the same.
    .flatMap(({ observation, settledBy }) => [observation, settledBy?.observation ?? observation])
  return [...new Set(asked)]
}

/** The questions that a walk may still come to from where it stands; none once it is finished. */
export function questionsAhead(tree: Tree, { asks }: Walk): readonly Question[] {
  if (asks === null) return []
  const questions = new Map(Object.entries(tree.questions))
  return [...reachedFrom(questions, asks.question)].flatMap(id => tree.questions[id] ?? [])
}

/** Whether what is only heard here was asked further on: told whole, it turned the walk aside before that. */
function wasAsked(tree: Tree, { asks }: Question, answer: Answer | undefined): boolean {
  const observation = tree.observations[asks]
  if (answer === undefined || observation === undefined) return false
  if (!(linkedOf(tree).questions.get(asks) ?? []).some(stops)) return false
  if (observation.kind !== 'signs') return true
  return observation.signs.every(
    ({ id, volunteered }) => volunteered || (isSigns(answer) && Object.hasOwn(answer, id))
  )
}

/** What one question can do under the told answers, whatever is asked before it. */
interface Station {
  /** The bit of its observation when it would stop to ask; 0n when it never does. */
  readonly stopsFor: bigint
  /** The questions that it can lead to; an end leads to none. */
  readonly leads: readonly string[]
  /** Those that a walk may turn to once it stopped here: what is told may count at a question before. */
  readonly back: readonly string[]
}

/** The most questions that can still stop to ask, from one question on and including it. */
function stopsFrom(tree: Tree, answers: Answers, start: string): number {
  const stations = stationsOf(tree, answers)
  const ahead = askableFrom(stations)
  let found: ReadonlyMap<string, number> = new Map()
  for (;;) {
    const round = new Map<string, number>()
    const begun = new Set<string>()
    let cameRound = false
    const longest = (id: string, before: bigint): number => {
      // What nothing ahead asks again makes no difference any more.
      const asked = before & (ahead.get(id) ?? 0n)
      const key = `${id} ${asked}`
      // A settled question is read again, and so the ways can come round.
      cameRound ||= begun.has(key)
      const entry = round.get(key)
      if (entry !== undefined) return entry
      round.set(key, found.get(key) ?? 0)
      begun.add(key)
      const station = stations.get(id)
      if (station === undefined) return 0
      const stop = station.stopsFor !== 0n && (asked & station.stopsFor) === 0n
      let most = 0
      for (const next of stop ? [...station.leads, ...station.back] : station.leads)
        most = Math.max(most, longest(next, asked | station.stopsFor))
      if (stop) most++
      round.set(key, most)
      begun.delete(key)
      return most
    }
    const most = longest(start, 0n)
    // Where a way came round to something unfinished, what stood in for it must be what it came to.
    if (!cameRound || [...round].every(([key, each]) => found.get(key) === each)) return most
    found = round
  }
}

/** For each station the observations that it, and whatever it can lead to, would stop to ask. */
function askableFrom(stations: ReadonlyMap<string, Station>): ReadonlyMap<string, bigint> {
  const ahead = new Map([...stations].map(([id, { stopsFor }]) => [id, stopsFor]))
  for (let grew = true; grew; ) {
    grew = false
    for (const [id, { leads, back }] of [...stations].reverse()) {
      const bits = [...leads, ...back].reduce(
        (so, next) => so | (ahead.get(next) ?? 0n),
        ahead.get(id) ?? 0n
      )
      if (bits !== ahead.get(id)) {
        ahead.set(id, bits)
        grew = true
      }
    }
  }
  return ahead
}

function stationsOf(tree: Tree, answers: Answers): ReadonlyMap<string, Station> {
  const bits = new Map(Object.keys(tree.observations).map((id, index) => [id, 1n << BigInt(index)]))
  return new Map(
    Object.values(tree.questions).map(question => {
      const decision = decide(tree, question, answers)
      const branches =
        decision !== undefined && isFixed(tree, question, answers)
          ? [decision.branch]
          : waysFrom(tree, question)
      const stopsFor =
        decision === undefined && stops(question) ? must(bits.get(question.asks), 'bit') : 0n
      const back = heardBefore(tree, question).flatMap(heard => waysFrom(tree, heard))
      return [question.id, { stopsFor, leads: ledTo(branches), back: ledTo(back) }]
    })
  )
}

const ledTo = (branches: readonly Branch[]): readonly string[] => [
  ...new Set(branches.flatMap(({ leads }) => ('to' in leads ? [leads.to] : [])))
]

const stops = (question: Question | undefined): boolean =>
  question !== undefined && !isVolunteered(question)

/** Whether no answer still to come can change what this question makes of the answers. */
const isFixed = (tree: Tree, question: Question, answers: Answers): boolean =>
  !isAskedElsewhere(tree, question, answers) &&
  settlersOf(tree, question.asks).every(({ id }) => Object.hasOwn(answers, id))

/** The questions that hear what this one asks, and never ask it. */
const heardBefore = (tree: Tree, { asks }: Question): readonly Question[] =>
  (linkedOf(tree).questions.get(asks) ?? []).filter(isVolunteered)

/** Whether what this question only hears is still untold, and another question may ask it. */
const isAskedElsewhere = (tree: Tree, { asks }: Question, answers: Answers): boolean =>
  !Object.hasOwn(answers, asks) && (linkedOf(tree).questions.get(asks) ?? []).some(stops)

/** Every way out of a question, also those that a settling answer opens. */
const waysFrom = (tree: Tree, question: Question): readonly Branch[] =>
  question.kind === 'choice'
    ? [...branchesOf(question), ...settledBranches(tree, question.asks)]
    : branchesOf(question)

/** A settling answer sends the walk back to where the settled observation is read. */
function settledBranches(tree: Tree, asks: string): readonly Branch[] {
  const observation = tree.observations[asks]
  const settles = observation?.kind === 'choice' ? observation.settles : undefined
  return Object.values(tree.questions).flatMap(question =>
    question.kind === 'choice' && question.asks === settles
      ? Object.entries(question.answers).flatMap(([answer, branch]) =>
          answer === 'unsure' ? [] : [branch]
        )
      : []
  )
}
