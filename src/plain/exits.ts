import type { Interval } from '../tree/answers.ts'
import { bandKey } from '../tree/bands.ts'
import { reachedFrom } from '../tree/circuit.ts'
import { decide, isVolunteered, takesTurn } from '../tree/decide.ts'
import { EMERGENCY } from '../tree/emergency.ts'
import { linkedOf, settlersOf } from '../tree/linked.ts'
import { observationOf } from '../tree/must.ts'
import type {
  Branch,
  ChoiceQuestion,
  Effect,
  MeasureQuestion,
  Question,
  SignsQuestion,
  Tree
} from '../tree/tree.ts'
import { runsOf } from './readings.ts'
import type { On } from './stop.ts'

/** What a reader can say at a question, and what comes of it. */
export interface WayOut {
  readonly on: On
  readonly branch: Branch
}

/** Signs of a screen that raise and turn alike: asked together. */
export interface SignGroup {
  readonly signs: readonly string[]
  readonly yes: Effect
  readonly unsure: Effect
  /** The first turn that each value takes; none where there is no such turn. */
  readonly turns: { readonly yes: number; readonly unsure: number }
}

const NOTHING: Effect = { raise: [], use: 'as-directed', notes: [] }

/** Whether what a question asks is asked, and not only heard, further on: what is said there counts here as well. */
const isAskedAfter = (tree: Tree, question: Question): boolean =>
  othersAsking(tree, question).some(({ id }) => isReached(tree, question.id, id))

/** Whether a question was perhaps answered before: then the reader thinks back. */
export const isAskedBefore = (tree: Tree, question: Question): boolean =>
  othersAsking(tree, question).some(({ id }) => isReached(tree, id, question.id))

/** Whether a tree only hears what a question asks, and nobody is asked it before or after it on any way. */
export const isPassed = (tree: Tree, question: Question): boolean =>
  isVolunteered(question) && !isAskedBefore(tree, question) && !isAskedAfter(tree, question)

/** Whether a question only takes up what was said before it: whoever was not asked says nothing. */
export const isOnlyRecalled = (tree: Tree, question: Question): boolean =>
  isVolunteered(question) && !isAskedAfter(tree, question)

const othersAsking = (tree: Tree, { id, asks }: Question): readonly Question[] =>
  (linkedOf(tree).questions.get(asks) ?? []).filter(
    other => other.id !== id && !isVolunteered(other)
  )

const isReached = (tree: Tree, from: string, to: string): boolean =>
  reachedFrom(new Map(Object.entries(tree.questions)), from).has(to)

/** The ways out of a choice, those that come to the very same together. */
export function waysOfChoice(question: ChoiceQuestion): readonly WayOut[] {
  const together = new Map<string, { among: string[]; branch: Branch }>()
  for (const [answer, branch] of Object.entries(question.answers)) {
    const key = JSON.stringify(branch)
    const way = together.get(key) ?? { among: [], branch }
    way.among.push(answer)
    together.set(key, way)
  }
  return [...together.values()].map(({ among, branch }) => ({
    on: { kind: 'answers', among },
    branch
  }))
}

/** The ways out of a measure: readings by what they come to, and no reading. */
export function waysOfMeasure(tree: Tree, question: MeasureQuestion): readonly WayOut[] {
  const measure = observationOf(tree.observations, question.asks, 'measure')
  const branches = new Map<string, Branch>()
  const byBand = new Map<string, string>()
  const keyOf = (interval: Interval): string => {
    const band = bandKey(tree, measure, interval)
    const before = byBand.get(band)
    if (before !== undefined) return before
    const branch = decide(tree, question, { [question.asks]: interval })?.branch ?? question.unsure
    const key = JSON.stringify(branch)
    branches.set(key, branch)
    byBand.set(band, key)
    return key
  }
  const runs = runsOf(measure, keyOf)
  const read = [...runs].flatMap(([key, own]): WayOut[] => {
    const branch = branches.get(key)
    return branch === undefined ? [] : [{ on: { kind: 'readings', runs: own }, branch }]
  })
  return [...read, { on: { kind: 'answers', among: ['unsure'] }, branch: question.unsure }]
}

/**
 * The groups in which a screen's signs are asked, in the authors' order; `matters` tells how a sign's
 * effect counts for what is raised. Signs that raise and turn nothing are in no group.
 */
export function groupsOf(
  tree: Tree,
  question: SignsQuestion,
  matters: (effect: Effect) => readonly number[]
): readonly SignGroup[] {
  const observation = observationOf(tree.observations, question.asks, 'signs')
  const groups = new Map<string, SignGroup>()
  for (const { id, volunteered } of observation.signs) {
    if (volunteered) continue
    const { yes, unsure } = question.signs[id] ?? { yes: NOTHING, unsure: NOTHING }
    const turnOf = (value: 'yes' | 'unsure') =>
      question.turns.findIndex(turn => turn.signs.includes(id) && takesTurn(value, turn.orUnsure))
    const turns = { yes: turnOf('yes'), unsure: turnOf('unsure') }
    const levels = { yes: matters(yes), unsure: matters(unsure) }
    const counts =
      [...levels.yes, ...levels.unsure].some(level => level > 0) ||
      turns.yes >= 0 ||
      turns.unsure >= 0
    if (!counts) continue
    // An emergency is told by itself: it ends the walk.
    const alone = yes.raise.includes(EMERGENCY) || !isCovered(levels, turns)
    const key = JSON.stringify(alone ? id : [levels, turns])
    const before = groups.get(key)
    groups.set(key, { signs: [...(before?.signs ?? []), id], yes, unsure, turns })
  }
  return [...groups.values()]
}

/** Whether a yes to one sign leaves nothing to ask of another of its kind: "not sure" adds nothing to it. */
function isCovered(
  levels: Readonly<Record<'yes' | 'unsure', readonly number[]>>,
  turns: SignGroup['turns']
): boolean {
  const turnsAside = turns.unsure >= 0 && (turns.yes < 0 || turns.unsure < turns.yes)
  return !turnsAside && levels.unsure.every((level, side) => level <= (levels.yes[side] ?? 0))
}

/** The choice that a question's answers settle, where they do. */
export function settledBy(tree: Tree, question: Question): string | undefined {
  const observation = tree.observations[question.asks]
  return observation?.kind === 'choice' ? observation.settles : undefined
}

/** Whether "not sure" at a question leads straight to what can settle it. */
export function leadsToSettler(tree: Tree, question: Question, branch: Branch): boolean {
  if (!('to' in branch.leads)) return false
  const next = tree.questions[branch.leads.to]
  return settlersOf(tree, question.asks).some(({ id }) => id === next?.asks)
}
