import type { Diagrams } from '../diagrams/diagram.ts'
import { at, must } from '../tree/must.ts'

interface Vertex {
  readonly variable: number
  readonly children: readonly number[]
  /** Where its rows lead, looked up once: counting rows is what sifting does all the time. */
  leads?: readonly number[]
}

/** The ways on from a vertex, each of them a row's: their number is what makes a table long. */
export type WaysOf = (
  variable: number,
  children: readonly number[]
) => readonly { readonly leads: number }[]

/**
 * One diagram whose variables can change places. The order decides how many rows a table has, never
 * what it says: a sign that settles the matter by itself costs one row at the top and doubles rows
 * further down.
 */
export class Ordering {
  readonly root: number
  readonly #constants: (vertex: number) => boolean
  readonly #ways: WaysOf
  readonly #vertices = new Map<number, Vertex>()
  /** The vertices that ask each variable: a swap looks at two of these alone. */
  readonly #layers = new Map<number, Set<number>>()
  #order: number[]
  #next: number

  constructor(diagrams: Diagrams, root: number, ways: WaysOf) {
    this.root = root
    this.#constants = vertex => diagrams.isConstant(vertex)
    this.#ways = ways
    const visit = (id: number): void => {
      if (diagrams.isConstant(id) || this.#vertices.has(id)) return
      const children = diagrams.childrenOf(id)
      this.#put(id, { variable: diagrams.variableOf(id), children })
      children.forEach(visit)
    }
    visit(root)
    this.#order = [...this.#layers.keys()].sort((a, b) => a - b)
    this.#next = diagrams.count
  }

  isConstant(vertex: number): boolean {
    return this.#constants(vertex)
  }

  /** What the diagram asks at all, in the order of now. */
  variables(): readonly number[] {
    return [...this.#order]
  }

  /** What a vertex that is no constant asks, and where its values lead. */
  vertexOf(id: number): Vertex {
    return must(this.#vertices.get(id), 'vertex')
  }

  /** How many rows the table has in this order, or the part of it below a vertex. */
  rows(from = this.root): number {
    const cache = new Map<number, number>()
    const visit = (id: number): number => {
      if (this.#constants(id)) return 1
      const before = cache.get(id)
      if (before !== undefined) return before
      const vertex = this.vertexOf(id)
      vertex.leads ??= this.#ways(vertex.variable, vertex.children).map(({ leads }) => leads)
      let sum = 0
      for (const to of vertex.leads) sum += visit(to)
      cache.set(id, sum)
      return sum
    }
    return visit(from)
  }

  /** Moves one variable after another to the place where it makes the fewest rows (Rudell's sifting, 1993; from memory). */
  sift(rounds = 2): void {
    let best = this.rows()
    for (let round = 0; round < rounds; round++) {
      const before = best
      for (const variable of [...this.#order]) best = this.#place(variable, best)
      if (best === before) return
    }
  }

  #place(variable: number, rows: number): number {
    const last = this.#order.length - 1
    let best = rows
    let position = this.#order.indexOf(variable)
    let place = position
    const step = (to: number) => {
      this.#swap(Math.min(position, to))
      position = to
      const now = this.rows()
      if (now < best) {
        best = now
        place = position
      }
      return now
    }
    // Far too many rows: this direction leads nowhere.
    while (position < last) if (step(position + 1) > best * 3) break
    while (position > 0) if (step(position - 1) > best * 3 && position < place) break
    while (position !== place) {
      const to = position + Math.sign(place - position)
      this.#swap(Math.min(position, to))
      position = to
    }
    this.#sweep()
    return best
  }

  /** How long the parts would be if the variable came first: one for each way on from there. */
  partsBy(variable: number): readonly number[] {
    const place = this.#order.indexOf(variable)
    for (let index = place; index > 0; index--) this.#swap(index - 1)
    const { children } = this.vertexOf(this.root)
    const parts = this.#ways(variable, children).map(({ leads }) => this.rows(leads))
    for (let index = 0; index < place; index++) this.#swap(index)
    this.#sweep()
    return parts
  }

  /** The variable at this place and the next one change places; every function stays what it is. */
  #swap(place: number): void {
    const [upper, lower] = [at(this.#order, place), at(this.#order, place + 1)]
    const asksLower = (child: number) => this.#vertices.get(child)?.variable === lower
    const kept = new Map<string, number>()
    const changing: [number, Vertex][] = []
    for (const id of this.#layers.get(upper) ?? []) {
      const vertex = this.vertexOf(id)
      if (vertex.children.some(asksLower)) changing.push([id, vertex])
      else kept.set(`${vertex.children}`, id)
    }
    for (const [index, { children }] of changing) {
      const below = this.vertexOf(must(children.find(asksLower), 'child')).children
      const turned = below.map((_, value) =>
        this.#make(
          upper,
          children.map(child =>
            asksLower(child) ? must(this.vertexOf(child).children[value], 'child') : child
          ),
          kept
        )
      )
      this.#take(index)
      this.#put(index, { variable: lower, children: turned })
    }
    this.#order.splice(place, 2, lower, upper)
  }

  #make(variable: number, children: readonly number[], kept: Map<string, number>): number {
    const first = must(children[0], 'child')
    if (children.every(child => child === first)) return first
    const key = `${children}`
    const before = kept.get(key)
    if (before !== undefined) return before
    const result = this.#next++
    this.#put(result, { variable, children })
    kept.set(key, result)
    return result
  }

  /** Forgets the vertices that nothing leads to any more. */
  #sweep(): void {
    const live = new Set<number>()
    const visit = (id: number): void => {
      if (this.#constants(id) || live.has(id)) return
      live.add(id)
      this.vertexOf(id).children.forEach(visit)
    }
    visit(this.root)
    for (const id of [...this.#vertices.keys()]) if (!live.has(id)) this.#take(id)
  }

  #put(id: number, vertex: Vertex): void {
    this.#vertices.set(id, vertex)
    const layer = this.#layers.get(vertex.variable)
    if (layer) layer.add(id)
    else this.#layers.set(vertex.variable, new Set([id]))
  }

  #take(id: number): void {
    this.#layers.get(this.vertexOf(id).variable)?.delete(id)
    this.#vertices.delete(id)
  }
}
