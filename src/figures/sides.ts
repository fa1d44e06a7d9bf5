import { allowedValues } from '../diagrams/allowed.ts'
import type { Variable } from '../diagrams/space.ts'
import { TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import { levelIn } from '../prove/replay.ts'
import type { Answer, Answers } from '../tree/answers.ts'
import { type Outcome, verdictsOf } from '../tree/caution.ts'
import { effectiveChoice } from '../tree/effective.ts'
import { settlersOf } from '../tree/linked.ts'
import { must } from '../tree/must.ts'
import { TRACKS } from '../tree/observation.ts'
import type { Tree } from '../tree/tree.ts'
import { type Coordinates, coordinatesOf } from './coordinates.ts'

/** Person, container, batch and use as functions of what is not yet told: four diagrams. */
export interface Sides {
  readonly id: number
  readonly diagrams: readonly number[]
  /** All four are decided, whatever is told next. */
  readonly settled: boolean
}

const LENSES = [...TRACKS, 'use'] as const

/** What is still open of an outcome after some answers; each answer fixes its coordinates. */
export class OpenSides {
  readonly #tree: Tree
  readonly #compiled: TreeDiagrams
  readonly #known = new Map<string, Sides>()
  readonly #fixed = new Map<string, number>()
  readonly #values = new Map<string, Map<Answer, Coordinates>>()
  readonly #levels = new Map<string, Map<number, number>>()
  /** Settled observations stay open until the walk ends: what settles them may still be told. */
  readonly #settled: readonly Variable[]

  constructor(tree: Tree) {
    this.#tree = tree
    this.#compiled = new TreeDiagrams(tree)
    this.#settled = this.#compiled.variables.filter(
      ({ observation, sign }) => sign === undefined && settlersOf(tree, observation).length > 0
    )
  }

  /** With nothing told. */
  start(): Sides {
    return this.#sides(LENSES.map(lens => this.#compiled.of(lens)))
  }

  /** With one more observation told; one that is settled by others, or settles, changes nothing yet. */
  told(sides: Sides, observation: string, answer: Answer): Sides {
    if (this.#settled.some(variable => variable.observation === observation)) return sides
    const before = this.#values.get(observation) ?? new Map<Answer, Coordinates>()
    const fixed = before.get(answer) ?? coordinatesOf(this.#compiled, observation, answer)
    this.#values.set(observation, before.set(answer, fixed))
    return this.#sides(
      sides.diagrams.map(side =>
        fixed.reduce((rest, [index, value]) => this.#restrict(rest, index, value), side)
      )
    )
  }

  /** A side that has one level left whatever is told next is that level. */
  narrowed(sides: Sides, answers: Answers): Sides {
    const open = new Map(
      this.#settled.map(variable => [
        must(this.#compiled.indexOf(variable.observation), 'variable'),
        allowedValues(this.#tree, variable, answers)
      ])
    )
    const key = [...open.values()].map(values => values.map(Number).join('')).join()
    const levels = this.#levels.get(key) ?? new Map<number, number>()
    this.#levels.set(key, levels)
    return this.#sides(
      sides.diagrams.map(side => {
        const mask = this.#mask(side, open, levels)
        return (mask & (mask - 1)) === 0 ? 31 - Math.clz32(mask) : side
      })
    )
  }

  /** The levels at the end of a walk: a sign that nobody told counts as no. */
  ended(sides: Sides, answers: Answers): Sides {
    const effective = new Map(
      this.#settled.map(({ observation: id, values }) => {
        const observation = this.#tree.observations[id]
        const counts =
          observation?.kind === 'choice' &&
          effectiveChoice(this.#tree, observation, answers)?.answer
        return [this.#compiled.indexOf(id), values.findIndex(({ answer }) => answer === counts)]
      })
    )
    const { diagrams, variables } = this.#compiled
    return this.#sides(
      sides.diagrams.map(side => {
        let vertex = side
        while (!diagrams.isConstant(vertex)) {
          const index = diagrams.variableOf(vertex)
          const { sign, values } = must(variables[index], 'variable')
          const value = sign
            ? values.findIndex(({ answer }) => answer === 'no')
            : Math.max(0, effective.get(index) ?? 0)
          vertex = must(diagrams.childrenOf(vertex)[value], 'child')
        }
        return vertex
      })
    )
  }

  /** The levels of an outcome. */
  of(outcome: Outcome): Sides {
    return this.#sides(LENSES.map(lens => levelIn(this.#tree, lens, outcome)))
  }

  /** The verdict of a settled outcome on one track; undefined where there is none. */
  verdict({ diagrams }: Sides, track: (typeof TRACKS)[number]): string | undefined {
    return verdictsOf(this.#tree, track)[must(diagrams[TRACKS.indexOf(track)], 'level') - 1]
  }

  #sides(diagrams: readonly number[]): Sides {
    const key = diagrams.join()
    const before = this.#known.get(key)
    if (before) return before
    const settled = diagrams.every(side => this.#compiled.diagrams.isConstant(side))
    const sides = { id: this.#known.size, diagrams, settled }
    this.#known.set(key, sides)
    return sides
  }

  #restrict(vertex: number, index: number, value: number): number {
    if (this.#compiled.diagrams.isConstant(vertex)) return vertex
    const key = `${vertex},${index},${value}`
    const before = this.#fixed.get(key) ?? this.#compiled.diagrams.restrict(vertex, index, value)
    this.#fixed.set(key, before)
    return before
  }

  /** The levels that can still be reached, a bit for each. */
  #mask(
    vertex: number,
    open: ReadonlyMap<number, readonly boolean[]>,
    sums: Map<number, number>
  ): number {
    const { diagrams } = this.#compiled
    if (diagrams.isConstant(vertex)) return 1 << vertex
    const before = sums.get(vertex)
    if (before !== undefined) return before
    const allowed = open.get(diagrams.variableOf(vertex))
    let mask = 0
    for (const [value, child] of diagrams.childrenOf(vertex).entries()) {
      if (allowed?.[value] !== false) mask |= this.#mask(child, open, sums)
    }
    sums.set(vertex, mask)
    return mask
  }
}
