import type { Open } from '../../src/diagrams/reach.ts'
import type { TreeDiagrams } from '../../src/diagrams/tree-diagrams.ts'
import type { Breach } from '../../src/prove/claim.ts'
import { isUsual } from '../../src/prove/open.ts'
import type { ValueChoice } from '../../src/prove/witness.ts'
import { Claimed } from './claimed.ts'
import type { Costs, Exit, Picks } from './exits.ts'
import { type Grades, gradesOf, type Levels, levelsOf } from './grades.ts'
import { Memories } from './memories.ts'
import { type Plan, planOf, type Spot } from './plan.ts'
import { type Rereading, rereadingOf } from './rereading.ts'

/** What a search came to: the fewest unusual answers that break a claim, none, or too much to search. */
export type Found =
  | { readonly kind: 'breach'; readonly choice: ValueChoice }
  | { readonly kind: 'none' }
  | { readonly kind: 'too-much' }

/** How many states a search may meet before it gives up; large trees of a usual shape meet some ten thousand. */
export const MOST_STATES = 1_000_000
/** How many different memories: where each question reads something again they double and double. */
const MOST_MEMORIES = 5_000

/** A walk that has come to a spot: the highest grade met, and what is remembered. */
interface State {
  readonly grade: number
  readonly memory: number
  cost: number
  from: State | null
  picks: Picks | null
}

/**
 * Searches a tree question by question for a walk that breaks a claim, without diagrams: linear in the
 * questions where nothing is read twice on a walk, and else where little has to be remembered.
 */
export class Search {
  readonly plan: Plan
  readonly #made: TreeDiagrams
  readonly #rereading: Rereading
  readonly #levels = new Map<string, Levels>()
  readonly #claimed = new Map<string, Claimed>()

  constructor(compiled: TreeDiagrams) {
    this.#made = compiled
    this.plan = planOf(compiled)
    this.#rereading = rereadingOf(this.plan)
  }

  /** Whether some walk reads an observation twice. */
  get readsAgain(): boolean {
    return this.#rereading.observations.length > 0
  }

  /** The way to break a claim within the open values that takes the fewest unusual answers. */
  breaking(breach: Breach, open: Open, most = MOST_STATES): Found {
    const grades = gradesOf(breach)
    let [best, last]: [number, State | null] = [Number.POSITIVE_INFINITY, null]
    const done = this.#explore(grades, open, most, {
      worth: ({ cost }) => cost < best,
      ended: state => {
        if (grades.breaks[state.grade] && state.cost < best) [best, last] = [state.cost, state]
      }
    })
    if (!done) return { kind: 'too-much' }
    return last === null ? { kind: 'none' } : { kind: 'breach', choice: choiceOf(last) }
  }

  /** The questions that some answers come to; undefined where that is too much to search. */
  reached(open: Open, most = MOST_STATES): ReadonlySet<string> | undefined {
    const reached = new Set<string>()
    // Nothing is lost and nothing is graded: every way that answers can take is taken.
    const grades: Grades = { lens: 'batch', name: 'any', of: [], breaks: [true], lost: 1 }
    const done = this.#explore(grades, open, most, {
      worth: () => true,
      ended: () => {},
      met: ({ question }) => reached.add(question)
    })
    return done ? reached : undefined
  }

  #explore(
    grades: Grades,
    open: Open,
    most: number,
    on: {
      readonly worth: (state: State) => boolean
      readonly ended: (state: State) => void
      readonly met?: (spot: Spot) => void
    }
  ): boolean {
    const { spots } = this.plan
    const { observations, isLive } = this.#rereading
    const claimed = this.#claim(grades)
    const costs = costsOf(this.#made, open)
    const memories = new Memories()
    const places = new Map(observations.map((id, index) => [id, index]))
    const states: (Map<number, State> | undefined)[] = spots.map(() => undefined)
    const begun: State = { grade: 0, memory: 0, cost: 0, from: null, picks: null }
    states[0] = new Map([[0, begun]])
    let count = 0
    for (const [index, spot] of spots.entries()) {
      const here = states[index]
      if (here === undefined) continue
      states[index] = undefined
      on.met?.(spot)
      count += here.size
      if (count > most || memories.count > MOST_MEMORIES) return false
      const place = places.get(spot.asks) ?? -1
      let exits: readonly Exit[] | undefined
      for (const state of here.values()) {
        if (!on.worth(state)) continue
        const exitBefore = place < 0 ? undefined : memories.recall(state.memory, place)
        exits ??= exitBefore === undefined ? claimed.first(index, place, open, costs) : undefined
        const taken = exitBefore === undefined ? (exits ?? []) : [claimed.again(index, exitBefore)]
        for (const exit of taken) {
          const grade = Math.max(state.grade, exit.grade)
          if (grade >= grades.lost) continue
          const cost = state.cost + exit.cost
          const { to } = spot.ways[exit.way] as Spot['ways'][number]
          if (to < 0) {
            on.ended({ grade, memory: 0, cost, from: state, picks: exit.picks })
            continue
          }
          const added =
            place >= 0 && exitBefore === undefined && isLive(to, place)
              ? memories.add(state.memory, place, exit)
              : state.memory
          const memory = memories.kept(added, one => isLive(to, one))
          let next = states[to]
          if (next === undefined) {
            next = new Map()
            states[to] = next
          }
          const key = memory * 4 + grade
          const before = next.get(key)
          if (before === undefined) {
            next.set(key, { grade, memory, cost, from: state, picks: exit.picks })
          } else if (cost < before.cost) {
            before.cost = cost
            before.from = state
            before.picks = exit.picks
          }
        }
      }
    }
    return true
  }

  #claim(grades: Grades): Claimed {
    const lens = JSON.stringify(grades.lens)
    const levels = this.#levels.get(lens) ?? levelsOf(this.#made.tree, this.plan, grades.lens)
    const claimed =
      this.#claimed.get(grades.name) ?? new Claimed(this.plan, this.#rereading, levels, grades)
    this.#levels.set(lens, levels)
    this.#claimed.set(grades.name, claimed)
    return claimed
  }
}

function choiceOf(last: State): ValueChoice {
  const choice = new Map<number, number>()
  for (let state: State | null = last; state !== null; state = state.from) {
    for (let picks = state.picks; picks !== null; picks = picks.before) {
      choice.set(picks.variable, picks.value)
    }
  }
  return choice
}

/** An unusual value counts where a usual one is open as well. */
function costsOf(compiled: TreeDiagrams, open: Open): Costs {
  return compiled.variables.map((variable, index) => {
    const usual = variable.values.map(value => isUsual(compiled.tree, variable, value))
    const free = usual.some((is, value) => is && open[index]?.[value])
    return usual.map(is => (free && !is ? 1 : 0))
  })
}
