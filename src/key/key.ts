import { mergeEffects } from '../tree/decide.ts'
import { EMERGENCY } from '../tree/emergency.ts'
import { settlersOf } from '../tree/linked.ts'
import { must, observationOf } from '../tree/must.ts'
import type { MeasureObservation, Range } from '../tree/observation.ts'
import type {
  Branch,
  ChoiceQuestion,
  Destination,
  Effect,
  MeasureQuestion,
  Question,
  SignsQuestion,
  Tree
} from '../tree/tree.ts'
import { limitsOf, type RangeLimits } from './limits.ts'

/** A tree as a key on paper: numbered leads, followed with a finger. Plain data, ready to be printed. */
export interface Key {
  readonly tree: string
  /** In the order of their numbers, from 1. The first is where everybody begins. */
  readonly leads: readonly Lead[]
}

/** One numbered lead: a question, and what each answer to it takes and where it goes. */
export interface Lead {
  readonly number: number
  readonly question: string
  readonly observation: string
  /** The leads that send here. */
  readonly from: readonly number[]
  /** The lead at which the same was asked before on every way here; null where this one asks. */
  readonly lookBack: number | null
  /** It is asked of nobody: only what applies is marked. */
  readonly onlyIfSo: boolean
  /** Taken of all that apply. */
  readonly rows: readonly LeadRow[]
  /** In order: of the first that applies it is taken, and it says where to go. */
  readonly turns: readonly LeadTurn[]
}

/** What is taken when it applies. */
export interface LeadRow {
  readonly when: LeadWhen
  readonly takes: LeadTakes
}

/** What is taken when it is the first to apply, and where it goes. */
export interface LeadTurn extends LeadRow {
  readonly goes: Goes
}

/** What is taken into the hand: verdict sheets, a use, remarks. */
export interface LeadTakes {
  readonly sheets: readonly string[]
  readonly use: Effect['use']
  readonly notes: readonly string[]
}

/** On to a lead, back to one with an answer to it, or to the end. */
export type Goes =
  | { readonly to: number; readonly as?: { readonly observation: string; readonly answer: string } }
  | { readonly end: string }
  /** An emergency: everything else is put down. */
  | { readonly stop: true }

/** LeadWhen a row or a turn applies. */
export type LeadWhen =
  | { readonly kind: 'answer'; readonly answer: string }
  | { readonly kind: 'sign'; readonly sign: string; readonly value: 'yes' | 'unsure' }
  | { readonly kind: 'any-sign'; readonly signs: readonly string[]; readonly orUnsure: boolean }
  | { readonly kind: 'range'; readonly range: Range; readonly limits: readonly RangeLimits[] }
  /** Compares what was read alone, whatever the instrument. */
  | { readonly kind: 'reading'; readonly range: Range }
  | { readonly kind: 'unsure' }
  | { readonly kind: 'otherwise' }

/**
 * The key of a tree, lead by lead. It holds all that a walk on paper needs: whoever follows it reads no tree.
 *
 * @throws Error where a second look stands anywhere but behind the "not sure" that it settles.
 */
export function keyOf(tree: Tree): Key {
  const order = leadOrder(tree)
  const numbers = new Map(order.map((id, index) => [id, index + 1]))
  const numberOf = (id: string) => must(numbers.get(id), `lead of ${id}`)
  const first = firstAsked(tree, order)
  const drafts = order.map((id, index) => {
    const question = must(tree.questions[id], id)
    const asked = must(first.get(question.asks), question.asks)
    return {
      number: index + 1,
      question: id,
      observation: question.asks,
      lookBack: asked === id ? null : numberOf(asked),
      onlyIfSo: question.kind !== 'choice' && question.volunteered === true,
      ...partsOf(tree, question, numberOf)
    }
  })
  const sends = (from: { turns: readonly LeadTurn[] }, to: number) =>
    from.turns.some(({ goes }) => 'to' in goes && goes.to === to)
  const leads = drafts.map(draft => ({
    ...draft,
    from: drafts.filter(other => sends(other, draft.number)).map(({ number }) => number)
  }))
  return { tree: tree.id, leads }
}

type Parts = Pick<Lead, 'rows' | 'turns'>
type NumberOf = (question: string) => number

function partsOf(tree: Tree, question: Question, numberOf: NumberOf): Parts {
  switch (question.kind) {
    case 'choice':
      return partsOfChoice(tree, question, numberOf)
    case 'signs':
      return partsOfSigns(question, numberOf)
    case 'measure':
      return partsOfMeasure(tree, question, numberOf)
  }
}

function partsOfChoice(tree: Tree, question: ChoiceQuestion, numberOf: NumberOf): Parts {
  const observation = observationOf(tree.observations, question.asks, 'choice')
  if (observation.settles !== undefined) return partsOfSecondLook(tree, question, numberOf)
  const answers = [...observation.answers.map(({ id }) => id), 'unsure']
  const branches = answers.flatMap(answer => {
    const branch = question.answers[answer]
    return branch === undefined ? [] : [{ when: { kind: 'answer', answer } as const, branch }]
  })
  const turns = branches.map(({ when, branch }) => {
    const turn = turnOf(when, branch, question, numberOf)
    // What "not sure" takes is taken at the second look, where that does not settle it.
    return settledNext(tree, question, when.answer) === null ? turn : { ...turn, takes: NOTHING }
  })
  return { rows: [], turns }
}

/** The lead of a second look: it answers the first question, or leaves it as it was. */
function partsOfSecondLook(tree: Tree, question: ChoiceQuestion, numberOf: NumberOf): Parts {
  const observation = observationOf(tree.observations, question.asks, 'choice')
  const [before, ...others] = Object.values(tree.questions).filter(
    each => each.kind === 'choice' && leadsTo(each, question.id)
  )
  if (before?.kind !== 'choice' || others.length > 0 || before.asks !== observation.settles) {
    throw new Error(`${tree.id}: ${question.id} is not behind the one question that it settles`)
  }
  const unsure = must(before.answers.unsure, `unsure of ${before.id}`)
  const own = must(question.answers.unsure, `unsure of ${question.id}`)
  const settling = observation.answers.flatMap(({ id, standsFor }) =>
    standsFor === undefined
      ? []
      : [
          {
            when: { kind: 'answer', answer: id } as const,
            takes: NOTHING,
            goes: {
              to: numberOf(before.id),
              as: { observation: before.asks, answer: standsFor }
            }
          }
        ]
  )
  const left: Branch = { ...mergeEffects([unsure, own]), leads: own.leads }
  return {
    rows: [],
    turns: [...settling, turnOf({ kind: 'otherwise' }, left, question, numberOf)]
  }
}

/** The second look that an answer goes to next; null where it goes to none. */
function settledNext(tree: Tree, question: ChoiceQuestion, answer: string): string | null {
  const branch = question.answers[answer]
  if (branch === undefined || !('to' in branch.leads)) return null
  const next = must(tree.questions[branch.leads.to], branch.leads.to)
  const settlers = settlersOf(tree, question.asks).map(({ id }) => id)
  return settlers.includes(next.asks) ? next.id : null
}

const leadsTo = (question: ChoiceQuestion, id: string) =>
  Object.values(question.answers).some(({ leads }) => 'to' in leads && leads.to === id)

function partsOfSigns(question: SignsQuestion, numberOf: NumberOf): Parts {
  const rows = Object.entries(question.signs).flatMap(([sign, effect]) =>
    (['yes', 'unsure'] as const).map(value => rowOf({ kind: 'sign', sign, value }, effect[value]))
  )
  const stops = rows.flatMap(row =>
    isStop(row.takes, question) ? [{ ...row, goes: { stop: true } as const }] : []
  )
  const branches = question.turns.map(turn => ({
    when: { kind: 'any-sign', signs: turn.signs, orUnsure: turn.orUnsure } as const,
    turn
  }))
  return {
    rows: rows.filter(({ takes }) => !isNothing(takes)),
    turns: [
      ...stops,
      ...branches.map(({ when, turn }) => turnOf(when, turn, question, numberOf)),
      turnOf({ kind: 'otherwise' }, question.otherwise, question, numberOf)
    ]
  }
}

function partsOfMeasure(tree: Tree, question: MeasureQuestion, numberOf: NumberOf): Parts {
  const observation = observationOf(tree.observations, question.asks, 'measure')
  const when = (range: Range) =>
    ({ kind: 'range', range, limits: limitsOf(observation, range) }) as const
  const branches: readonly { when: LeadWhen; branch: Branch }[] = [
    ...question.ranges.map(branch => ({ when: when(branch.range), branch })),
    { when: { kind: 'unsure' }, branch: question.unsure },
    // A count has no width: one of the ranges always holds it.
    ...(isCount(observation)
      ? []
      : [{ when: { kind: 'otherwise' } as const, branch: question.borderline }])
  ]
  return {
    rows: question.taste.map(taste => rowOf({ kind: 'reading', range: taste.range }, taste)),
    turns: branches.map(({ when, branch }) => turnOf(when, branch, question, numberOf))
  }
}

const isCount = ({ instruments }: MeasureObservation) => instruments.length === 0

const NOTHING: LeadTakes = { sheets: [], use: 'as-directed', notes: [] }

const isNothing = ({ sheets, use, notes }: LeadTakes) =>
  sheets.length === 0 && notes.length === 0 && use === 'as-directed'

const takesOf = (effect: Effect & { readonly leads?: Destination }): LeadTakes => ({
  sheets: [...effect.raise, ...(effect.leads && 'end' in effect.leads ? [effect.leads.end] : [])],
  use: effect.use,
  notes: effect.notes
})

const rowOf = (when: LeadWhen, effect: Effect): LeadRow => ({ when, takes: takesOf(effect) })

/** An emergency that counts on every walk ends it. */
const isStop = ({ sheets }: LeadTakes, { onlyHere }: Question) =>
  onlyHere !== true && sheets.includes(EMERGENCY)

function turnOf(when: LeadWhen, branch: Branch, question: Question, numberOf: NumberOf): LeadTurn {
  const takes = takesOf(branch)
  const stops = question.kind === 'choice' && isStop(takes, question)
  return { when, takes, goes: stops ? { stop: true } : goesOf(branch.leads, numberOf) }
}

const goesOf = (leads: Destination, numberOf: NumberOf): Goes =>
  'to' in leads ? { to: numberOf(leads.to) } : { end: leads.end }

const nextOf = (question: Question): readonly string[] => {
  const branches: readonly Branch[] =
    question.kind === 'choice'
      ? Object.values(question.answers)
      : question.kind === 'signs'
        ? [...question.turns, question.otherwise]
        : [...question.ranges, question.borderline, question.unsure]
  return branches.flatMap(({ leads }) => ('to' in leads ? [leads.to] : []))
}

/** Every question that can be come to, each before those that it leads to. */
function leadOrder(tree: Tree): readonly string[] {
  const done = new Set<string>()
  const order: string[] = []
  const visit = (id: string) => {
    if (done.has(id)) return
    done.add(id)
    // The last branch first: what most go on to then follows at once.
    for (const next of [...nextOf(must(tree.questions[id], id))].reverse()) visit(next)
    order.unshift(id)
  }
  visit(tree.start)
  return order
}

/** By observation the question that asks it first, where that is passed on every way to the others. */
function firstAsked(tree: Tree, order: readonly string[]): ReadonlyMap<string, string> {
  const first = new Map<string, string>()
  for (const id of order) {
    const { asks } = must(tree.questions[id], id)
    if (!first.has(asks)) first.set(asks, id)
  }
  return first
}
