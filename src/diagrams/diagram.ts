import { at } from '../tree/must.ts'
import { NumbersMap } from './numbers-map.ts'

/** Thrown where a diagram would grow beyond what one machine holds in memory. */
export class TooManyVertices extends Error {
  constructor(most: number) {
    super(`more than ${most} diagram vertices`)
  }
}

/** Diagrams as plain numbers, to keep and to read again. */
export interface PackedDiagrams {
  /** The vertices that were asked for. */
  readonly roots: readonly number[]
  /** For each vertex its variable and then its children, each after its own children. */
  readonly vertices: Int32Array
}

/**
 * Reduced multi-valued decision diagrams with small numbers at the ends (levels of caution).
 * Vertices are shared: two equal functions are the same vertex, so comparing is `===`.
 */
export class Diagrams {
  /** Number of values of each variable, in order from the top. */
  readonly sizes: readonly number[]
  readonly #variable: number[] = []
  readonly #children: (readonly number[])[] = []
  readonly #unique = new NumbersMap()
  readonly #selected = new NumbersMap()
  readonly #joined = new Map<number, number>()
  readonly #met = new Map<number, number>()
  readonly #most: number

  /** `most`: how many vertices there may be before `TooManyVertices` is thrown. */
  constructor(sizes: readonly number[], most = MOST_VERTICES) {
    this.sizes = sizes
    this.#most = most
    for (let value = 0; value < TERMINALS; value++) {
      this.#variable.push(sizes.length)
      this.#children.push([])
    }
  }

  /** Diagrams as `packed` gave them. @throws RangeError where they are over other variables. */
  static of(sizes: readonly number[], { vertices }: PackedDiagrams): Diagrams {
    const diagrams = new Diagrams(sizes)
    for (let place = 0; place < vertices.length; ) {
      const variable = at(vertices, place)
      const size = at(sizes, variable)
      diagrams.#vertex(variable, [...vertices.subarray(place + 1, place + 1 + size)])
      place += 1 + size
    }
    return diagrams
  }

  /** Some diagrams, and what they lead to, as plain numbers: `Diagrams.of` makes them again. */
  packed(roots: readonly number[]): PackedDiagrams {
    const numbers = new Map<number, number>()
    const vertices: number[] = []
    // INVARIANT: children come before whoever leads to them, so that each number is given when it is named.
    const visit = (diagram: number): number => {
      if (this.isConstant(diagram)) return diagram
      const before = numbers.get(diagram)
      if (before !== undefined) return before
      const children = this.childrenOf(diagram).map(visit)
      vertices.push(this.variableOf(diagram), ...children)
      const number = TERMINALS + numbers.size
      numbers.set(diagram, number)
      return number
    }
    return { roots: roots.map(visit), vertices: Int32Array.from(vertices) }
  }

  /** How many vertices there are, ends included. */
  get count(): number {
    return this.#variable.length
  }

  /** The diagram that is the same level everywhere. @throws RangeError beyond the ends there are. */
  constant(level: number): number {
    if (level < 0 || level >= TERMINALS) throw new RangeError(`level ${level}`)
    return level
  }

  isConstant(diagram: number): boolean {
    // INVARIANT: the first vertices are the levels themselves: a constant diagram is its level.
    return diagram < TERMINALS
  }

  /** The variable that a diagram asks first; past the last one for a constant. */
  variableOf(diagram: number): number {
    return this.#variable[diagram] as number
  }

  childrenOf(diagram: number): readonly number[] {
    return this.#children[diagram] as readonly number[]
  }

  /** Asks `variable` and goes on with the chosen diagram, which may ask any variable, earlier ones too. */
  select(variable: number, choices: readonly number[]): number {
    const first = at(choices, 0)
    if (choices.every(choice => choice === first) && this.variableOf(first) !== variable)
      return first
    const before = this.#selected.get(variable, choices)
    if (before !== undefined) return before
    let top = variable
    for (const choice of choices) top = Math.min(top, this.variableOf(choice))
    const vertex =
      top === variable
        ? this.#vertex(
            top,
            choices.map((choice, value) => this.#child(choice, top, value))
          )
        : this.#vertex(
            top,
            listOf(at(this.sizes, top), value =>
              this.select(
                variable,
                choices.map(choice => this.#child(choice, top, value))
              )
            )
          )
    this.#selected.add(variable, choices, vertex)
    return vertex
  }

  /** The higher level of the two, everywhere. */
  join(a: number, b: number): number {
    if (a === b || b === 0) return a
    if (a === 0) return b
    if (this.isConstant(a) && this.isConstant(b)) return Math.max(a, b)
    const key = a < b ? a * PAIR + b : b * PAIR + a
    const before = this.#joined.get(key)
    if (before !== undefined) return before
    const top = Math.min(this.variableOf(a), this.variableOf(b))
    const vertex = this.#vertex(
      top,
      listOf(at(this.sizes, top), value =>
        this.join(this.#child(a, top, value), this.#child(b, top, value))
      )
    )
    this.#joined.set(key, vertex)
    return vertex
  }

  /** The lower level of the two, everywhere. */
  meet(a: number, b: number): number {
    if (a === b || a === 0) return a
    if (b === 0) return b
    if (this.isConstant(a) && this.isConstant(b)) return Math.min(a, b)
    const key = a < b ? a * PAIR + b : b * PAIR + a
    const before = this.#met.get(key)
    if (before !== undefined) return before
    const top = Math.min(this.variableOf(a), this.variableOf(b))
    const vertex = this.#vertex(
      top,
      listOf(at(this.sizes, top), value =>
        this.meet(this.#child(a, top, value), this.#child(b, top, value))
      )
    )
    this.#met.set(key, vertex)
    return vertex
  }

  /** Combines any number of diagrams value by value. */
  combine(diagrams: readonly number[], f: (levels: readonly number[]) => number): number {
    const cache = new NumbersMap()
    const visit = (vertices: readonly number[]): number => {
      const before = cache.get(0, vertices)
      if (before !== undefined) return before
      const vertex = vertices.every(diagram => this.isConstant(diagram))
        ? this.constant(f(vertices))
        : this.#split(vertices, visit)
      cache.add(0, vertices, vertex)
      return vertex
    }
    return visit(diagrams)
  }

  /** The diagram with one variable fixed. */
  restrict(diagram: number, variable: number, value: number): number {
    const cache = new Map<number, number>()
    const visit = (vertex: number): number => {
      const top = this.variableOf(vertex)
      if (top > variable) return vertex
      if (top === variable) return at(this.childrenOf(vertex), value)
      const before = cache.get(vertex)
      if (before !== undefined) return before
      const result = this.#vertex(top, this.childrenOf(vertex).map(visit))
      cache.set(vertex, result)
      return result
    }
    return visit(diagram)
  }

  /** The highest level over the open values of some variables, as a diagram of all the others. */
  highestOver(diagram: number, over: ReadonlyMap<number, readonly boolean[]>): number {
    const cache = new Map<number, number>()
    const visit = (vertex: number): number => {
      if (this.isConstant(vertex)) return vertex
      const before = cache.get(vertex)
      if (before !== undefined) return before
      const variable = this.variableOf(vertex)
      const open = over.get(variable)
      const children = this.childrenOf(vertex)
      const result =
        open === undefined
          ? this.#vertex(variable, children.map(visit))
          : children
              .filter((_, value) => open[value])
              .map(visit)
              .reduce((a, b) => this.join(a, b))
      cache.set(vertex, result)
      return result
    }
    return visit(diagram)
  }

  #split(vertices: readonly number[], visit: (vertices: readonly number[]) => number): number {
    const top = Math.min(...vertices.map(diagram => this.variableOf(diagram)))
    return this.#vertex(
      top,
      listOf(at(this.sizes, top), value =>
        visit(vertices.map(diagram => this.#child(diagram, top, value)))
      )
    )
  }

  #child(diagram: number, variable: number, value: number): number {
    return this.variableOf(diagram) === variable
      ? (this.childrenOf(diagram)[value] as number)
      : diagram
  }

  #vertex(variable: number, children: readonly number[]): number {
    // INVARIANT: one vertex for each variable and its children, so equal diagrams are equal numbers.
    const first = at(children, 0)
    if (children.every(child => child === first)) return first
    const before = this.#unique.get(variable, children)
    if (before !== undefined) return before
    if (this.count >= this.#most) throw new TooManyVertices(this.#most)
    const vertex = this.#variable.push(variable) - 1
    this.#children.push(children)
    this.#unique.add(variable, children, vertex)
    return vertex
  }
}

/** One end for each level there can be; no track has as many verdicts. */
const TERMINALS = 32
/** About a gigabyte; the shipped trees need a few ten thousand. */
const MOST_VERTICES = 4_000_000
/** Two vertex numbers in one exact integer: below 2^26 vertices each. */
const PAIR = 2 ** 26

/** A list made entry by entry: this runs millions of times, and `Array.from` is several times slower. */
function listOf(size: number, entry: (place: number) => number): number[] {
  const list = new Array<number>(size)
  for (let place = 0; place < size; place++) list[place] = entry(place)
  return list
}
