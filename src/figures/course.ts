import { must } from '../tree/must.ts'
import type { Tree } from '../tree/tree.ts'
import { type RouteStop, Routes } from './routes.ts'
import type { Likely } from './shares.ts'
import { OpenSides, type Sides } from './sides.ts'

/** Where walks wait for an answer, or have ended. Walks that nothing can tell apart any more share one. */
export interface Halt {
  readonly route: RouteStop
  readonly sides: Sides
}

/** Equal for two halts that are one. */
export const keyOf = ({ route, sides }: Halt): number => route.id * 2 ** 26 + sides.id

/**
 * The walks of a tree, one answer at a time: the same as `walk()` and `possible()`, remembering of the
 * answers only what can still count. Where a walk goes and what can come of it are worked out apart,
 * each step once.
 */
export class Course {
  readonly tree: Tree
  readonly sides: OpenSides
  readonly routes: Routes
  readonly #next = new Map<Likely, Map<RouteStop, RouteStop>>()
  readonly #told = new Map<Likely, Map<Sides, Sides>>()
  readonly #arrived = new Map<RouteStop, Map<Sides, Sides>>()

  constructor(tree: Tree) {
    this.tree = tree
    this.sides = new OpenSides(tree)
    this.routes = new Routes(tree)
  }

  /** Before the first answer. */
  start(): Halt {
    const route = this.routes.start()
    return { route, sides: this.#arrive(route, this.sides.start()) }
  }

  /** After the waiting question is answered. */
  answered({ route, sides }: Halt, likely: Likely): Halt {
    const asks = must(route.asks, 'observation')
    const next = once(this.#next, likely, route, () => this.routes.answered(route, likely.answer))
    const after = once(this.#told, likely, sides, () => this.sides.told(sides, asks, likely.answer))
    return { route: next, sides: this.#arrive(next, after) }
  }

  /** After an observation is told before anything is asked. */
  toldFirst(observation: string, { answer }: Likely): Halt {
    const route = this.routes.toldFirst(observation, answer)
    const after = this.sides.told(this.sides.start(), observation, answer)
    return { route, sides: this.#arrive(route, after) }
  }

  #arrive(route: RouteStop, sides: Sides): Sides {
    return once(this.#arrived, route, sides, () => {
      if (route.emergency) return this.sides.of(route.emergency)
      return route.asks === null
        ? this.sides.ended(sides, route.told)
        : this.sides.narrowed(sides, route.told)
    })
  }
}

function once<A, B, C>(all: Map<A, Map<B, C>>, a: A, b: B, make: () => C): C {
  let of = all.get(a)
  if (of === undefined) {
    of = new Map()
    all.set(a, of)
  }
  let before = of.get(b)
  if (before === undefined) {
    before = make()
    of.set(b, before)
  }
  return before
}
