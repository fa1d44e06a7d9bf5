import type { Interval } from '../tree/answers.ts'
import { leadingTo } from '../tree/circuit.ts'
import { decide, takesTurn } from '../tree/decide.ts'
import { type Lens, lensName, levelOf } from '../tree/lens.ts'
import { at, must } from '../tree/must.ts'
import { TRACKS } from '../tree/observation.ts'
import type {
  Branch,
  Effect,
  MeasureQuestion,
  Question,
  SignsQuestion,
  Tree
} from '../tree/tree.ts'
import { Diagrams, type PackedDiagrams } from './diagram.ts'
import { spaceOf, type Variable } from './space.ts'

/** The sides of an outcome that every evaluation asks about; of a note only some do. */
const SIDES = [...TRACKS, 'use'] as const

/** A tree as one diagram for each side of its outcome, over its answer space without emergencies. */
export class TreeDiagrams {
  readonly tree: Tree
  readonly variables: readonly Variable[]
  readonly diagrams: Diagrams
  readonly #index: ReadonlyMap<string, number>
  readonly #made = new Map<string, number>()
  readonly #apart = new Map<string, readonly string[]>()

  /** Over its own answer space, or over a wider one with the diagrams that another tree shares. */
  constructor(
    tree: Tree,
    variables: readonly Variable[] = spaceOf(tree),
    diagrams = new Diagrams(variables.map(variable => variable.values.length))
  ) {
    this.tree = tree
    this.variables = variables
    this.diagrams = diagrams
    this.#index = indexOf(variables)
  }

  /** The same diagrams for a tree that asks and answers alike, and differs in what it says. */
  saying(tree: Tree): TreeDiagrams {
    const other = new TreeDiagrams(tree, this.variables, this.diagrams)
    for (const [key, diagram] of this.#made) other.#made.set(key, diagram)
    return other
  }

  /** The diagrams of each side but the notes, as `packed` gave them for the very same tree. */
  static of(tree: Tree, packed: PackedDiagrams): TreeDiagrams {
    const variables = spaceOf(tree)
    const sizes = variables.map(variable => variable.values.length)
    const compiled = new TreeDiagrams(tree, variables, Diagrams.of(sizes, packed))
    for (const [index, side] of SIDES.entries()) {
      compiled.#made.set(`${tree.start} ${side}`, at(packed.roots, index))
    }
    return compiled
  }

  /** What can still come of any answers, but for the notes, as plain numbers. */
  packed(): PackedDiagrams {
    return this.diagrams.packed(SIDES.map(side => this.of(side)))
  }

  /** The place in the order of a choice, a measure, or one sign of a screen. */
  indexOf(observation: string, sign?: string): number | undefined {
    return this.#index.get(keyOf(observation, sign))
  }

  /** The level of caution on one side of the outcome, as a function of the answers. */
  of(lens: Lens): number {
    return this.from(this.tree.start, lens)
  }

  /** The level of caution that a walk meets from a question on. */
  from(question: string, lens: Lens): number {
    const key = `${question} ${lensName(lens)}`
    const before = this.#made.get(key)
    if (before !== undefined) return before
    const diagram = this.#ofQuestion(must(this.tree.questions[question], 'question'), lens)
    this.#made.set(key, diagram)
    return diagram
  }

  /** The level on one side if, from a question on, a walk met another one: what the question is for. */
  instead(lens: Lens, question: string, diagram: number): number {
    this.of(lens)
    const other = new TreeDiagrams(this.tree, this.variables, this.diagrams)
    const name = lensName(lens)
    for (const id of this.#apartFrom(question)) {
      // What does not lead to the question stays as it is known.
      const key = `${id} ${name}`
      const before = this.#made.get(key)
      if (before !== undefined) other.#made.set(key, before)
    }
    other.#made.set(`${question} ${name}`, diagram)
    return other.of(lens)
  }

  /** The questions from which no walk comes to this one. */
  #apartFrom(question: string): readonly string[] {
    const entry = this.#apart.get(question)
    if (entry !== undefined) return entry
    const questions = new Map(Object.entries(this.tree.questions))
    const before = leadingTo(questions, question)
    const apart = [...questions.keys()].filter(id => !before.has(id))
    this.#apart.set(question, apart)
    return apart
  }

  #ofQuestion(question: Question, lens: Lens): number {
    switch (question.kind) {
      case 'signs':
        return this.#ofSigns(question, lens)
      case 'measure':
        return this.#select(question.asks, value =>
          this.#branch(taken(this.tree, question, value), lens)
        )
      case 'choice': {
        const observation = this.tree.observations[question.asks]
        if (observation?.kind === 'choice' && observation.settles !== undefined) {
          // Reached only while the settled observation stays unsure, and so is this one.
          return this.#branch(must(question.answers.unsure, 'branch'), lens)
        }
        return this.#select(question.asks, value =>
          this.#branch(must(question.answers[String(value)], 'branch'), lens)
        )
      }
    }
  }

  #ofSigns(question: SignsQuestion, lens: Lens): number {
    const { diagrams } = this
    let diagram = this.#branch(question.otherwise, lens)
    for (const turn of [...question.turns].reverse()) {
      const taken = this.#branch(turn, lens)
      for (const sign of turn.signs) {
        const other = diagram
        diagram = this.#select(
          question.asks,
          value => (takesTurn(value, turn.orUnsure) ? taken : other),
          sign
        )
      }
    }
    for (const [sign, effects] of Object.entries(question.signs)) {
      const effect = this.#select(
        question.asks,
        value =>
          value === 'no' ? 0 : this.#constant(value === 'yes' ? effects.yes : effects.unsure, lens),
        sign
      )
      diagram = diagrams.join(diagram, effect)
    }
    return diagram
  }

  #select(
    observation: string,
    choose: (value: string | Interval) => number,
    sign?: string
  ): number {
    const index = must(this.indexOf(observation, sign), 'variable')
    const { values } = at(this.variables, index)
    return this.diagrams.select(
      index,
      values.map(value => choose(value.answer))
    )
  }

  #branch(branch: Branch, lens: Lens): number {
    const { leads } = branch
    if ('end' in leads) return this.diagrams.constant(levelOf(this.tree, lens, branch, leads.end))
    return this.diagrams.join(this.#constant(branch, lens), this.from(leads.to, lens))
  }

  #constant(effect: Effect, lens: Lens): number {
    return this.diagrams.constant(levelOf(this.tree, lens, effect))
  }
}

const indexes = new WeakMap<readonly Variable[], ReadonlyMap<string, number>>()

/** The place of each variable, made once: diagrams that answer "what if" share their variables. */
function indexOf(variables: readonly Variable[]): ReadonlyMap<string, number> {
  const index =
    indexes.get(variables) ?? new Map(variables.map((v, i) => [keyOf(v.observation, v.sign), i]))
  indexes.set(variables, index)
  return index
}

const compiled = new WeakMap<Tree, TreeDiagrams>()
const kept = new WeakMap<Tree, () => TreeDiagrams>()

/** The diagrams of a tree, built once. */
export function diagramsOf(tree: Tree): TreeDiagrams {
  const diagrams = compiled.get(tree) ?? kept.get(tree)?.() ?? new TreeDiagrams(tree)
  compiled.set(tree, diagrams)
  return diagrams
}

/** Says where the diagrams of a tree come from when they are first wanted: they may be kept somewhere. */
export function keepDiagrams(tree: Tree, diagrams: () => TreeDiagrams): void {
  kept.set(tree, diagrams)
}

function taken(tree: Tree, question: MeasureQuestion, value: string | Interval): Branch {
  return must(decide(tree, question, { [question.asks]: value })?.branch, 'branch')
}

function keyOf(observation: string, sign?: string): string {
  return sign === undefined ? observation : `${observation} ${sign}`
}
