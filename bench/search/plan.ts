import type { Variable } from '../../src/diagrams/space.ts'
import type { TreeDiagrams } from '../../src/diagrams/tree-diagrams.ts'
import type { Interval, SignValue } from '../../src/tree/answers.ts'
import { branchesOf } from '../../src/tree/circuit.ts'
import { decide, takesTurn } from '../../src/tree/decide.ts'
import type {
  Branch,
  Effect,
  MeasureQuestion,
  Question,
  SignsQuestion,
  Tree
} from '../../src/tree/tree.ts'

/** A tree laid out for searching: its questions in an order in which every one leads only to later ones. */
export interface Plan {
  readonly spots: readonly Spot[]
}

/** One question, by the coordinates that it reads. */
export interface Spot {
  readonly question: string
  readonly asks: string
  /** The coordinate of a choice or a measure. */
  readonly variable: number
  /** Signs: each with what its values do. */
  readonly cells: readonly Cell[]
  /** Of a choice or a measure: one for each value. Of signs: each turn in order, then the way without one. */
  readonly ways: readonly Way[]
}

/** One sign of a screen: for each value its effect, and the first turn that it takes. */
export interface Cell {
  readonly variable: number
  readonly effects: readonly (Effect | null)[]
  readonly turns: readonly number[]
}

/** A way out of a question: to a later spot, or to an end. */
export interface Way {
  /** The place of the next spot; -1 at an end. */
  readonly to: number
  readonly effect: Effect
  readonly end?: string
}

/** No coordinate: a settling observation's question goes on as unsure, which it stays when it is reached. */
export const NONE = -1

/** Lays out every question that the start leads to. */
export function planOf(compiled: TreeDiagrams): Plan {
  const { tree } = compiled
  const order = sorted(tree)
  const places = new Map(order.map((id, index) => [id, index]))
  const wayTo = (branch: Branch): Way => {
    const { leads } = branch
    return 'end' in leads
      ? { to: -1, effect: branch, end: leads.end }
      : { to: places.get(leads.to) as number, effect: branch }
  }
  return { spots: order.map(id => spotOf(compiled, tree.questions[id] as Question, wayTo)) }
}

function spotOf(compiled: TreeDiagrams, question: Question, wayTo: (branch: Branch) => Way): Spot {
  const { id, asks } = question
  const spot = { question: id, asks, variable: NONE, cells: [] }
  if (question.kind === 'signs') {
    const ways = [...question.turns, question.otherwise].map(wayTo)
    return { ...spot, cells: cellsOf(compiled, question), ways }
  }
  const variable = compiled.indexOf(asks)
  const { unsure } = question.kind === 'choice' ? question.answers : question
  if (variable === undefined) return { ...spot, ways: [wayTo(unsure as Branch)] }
  const branches = (compiled.variables[variable] as Variable).values.map(({ answer }) =>
    question.kind === 'choice'
      ? (question.answers[answer as string] as Branch)
      : rangeTaken(compiled.tree, question, answer as Interval | 'unsure')
  )
  return { ...spot, variable, ways: branches.map(wayTo) }
}

const rangeTaken = (tree: Tree, question: MeasureQuestion, answer: Interval | 'unsure'): Branch =>
  decide(tree, question, { [question.asks]: answer })?.branch as Branch

/** The signs that do something at this question. */
function cellsOf(compiled: TreeDiagrams, { asks, signs, turns }: SignsQuestion): readonly Cell[] {
  const read = new Set([...Object.keys(signs), ...turns.flatMap(turn => turn.signs)])
  return [...read].map(sign => {
    const variable = compiled.indexOf(asks, sign) as number
    const values = (compiled.variables[variable] as Variable).values.map(
      ({ answer }) => answer as SignValue
    )
    return {
      variable,
      effects: values.map(value => (value === 'no' ? null : (signs[sign]?.[value] ?? null))),
      turns: values.map(value => {
        const first = turns.findIndex(
          turn => turn.signs.includes(sign) && takesTurn(value, turn.orUnsure)
        )
        return first < 0 ? turns.length : first
      })
    }
  })
}

/** The start first, and every question before those that it leads to. Not recursive: trees can be deep. */
function sorted(tree: Tree): readonly string[] {
  const done: string[] = []
  const seen = new Set([tree.start])
  const open = [{ id: tree.start, next: nextOf(tree, tree.start) }]
  for (let top = open.at(-1); top !== undefined; top = open.at(-1)) {
    const id = top.next.pop()
    if (id === undefined) {
      done.push(top.id)
      open.pop()
    } else if (!seen.has(id)) {
      seen.add(id)
      open.push({ id, next: nextOf(tree, id) })
    }
  }
  return done.reverse()
}

function nextOf(tree: Tree, id: string): string[] {
  const question = tree.questions[id] as Question
  const leads = branchesOf(question).flatMap(({ leads }) => ('to' in leads ? [leads.to] : []))
  return [...new Set(leads)]
}
