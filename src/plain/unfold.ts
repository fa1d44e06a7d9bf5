import { diagramsOf } from '../diagrams/tree-diagrams.ts'
import { walk } from '../evaluate/walk.ts'
import { verdictsOf } from '../tree/caution.ts'
import { standsFor } from '../tree/effective.ts'
import { EMERGENCY } from '../tree/emergency.ts'
import { type Lens, levelOf } from '../tree/lens.ts'
import { at, must, observationOf } from '../tree/must.ts'
import { TRACKS, type Track } from '../tree/observation.ts'
import {
  type Branch,
  type Effect,
  type Question,
  type SignsQuestion,
  type Tree,
  USES
} from '../tree/tree.ts'
import {
  groupsOf,
  isPassed,
  leadsToSettler,
  type SignGroup,
  settledBy,
  type WayOut,
  waysOfChoice,
  waysOfMeasure
} from './exits.ts'
import { endsWithNotes } from './notes.ts'
import { notesOfSigns, turnTaken } from './signs-said.ts'
import type { BareEnd, StopState } from './state.ts'
import type { End, Exit, Leads, MetNote, On, PlainWalk, Stop } from './stop.ts'

/** Everything that is unfolded on the way: the verdicts, the use, and whether somebody is ill. */
function lensesOf({ advice }: Tree): readonly Lens[] {
  const { note } = advice.whileIll
  return [...TRACKS, 'use', ...(note === undefined ? [] : [{ note }])]
}

/**
 * Unfolds a tree over what was raised: two stops at one question are the same where everything still to
 * be said comes to the same verdicts and use, whatever is answered from there on.
 *
 * @throws Error where "not sure" does not lead straight to the question that can settle it.
 */
export function unfold(tree: Tree): PlainWalk {
  const unfolding = new Unfolding(tree)
  return unfolding.whole()
}

class Unfolding {
  readonly #tree: Tree
  readonly #lenses: readonly Lens[]
  readonly #states: StopState[] = []
  readonly #numbers = new Map<string, number>()
  readonly #ends: BareEnd[] = []
  readonly #endNumbers = new Map<string, number>()
  /** By question: what would be worked out anew at each of its stops. */
  readonly #ways = new Map<string, readonly WayOut[]>()
  readonly #groups = new Map<string, readonly SignGroup[]>()
  readonly #only = new Map<string, Branch | null>()

  constructor(tree: Tree) {
    this.#tree = tree
    this.#lenses = lensesOf(tree)
  }

  whole(): PlainWalk {
    const zero = this.#lenses.map(() => 0)
    this.#arrive({ question: this.#tree.start, levels: zero, group: 0, turn: NO_TURN, back: null })
    const stops: Stop[] = []
    // The list grows while it is gone through: each state is visited once.
    for (const state of this.#states) {
      const { question, group } = state
      stops.push({ question, group, exits: this.#exitsOf(state) })
    }
    const ends = endsWithNotes(stops, this.#ends).map((notes, index) => ({
      ...this.#outcomeOf(at(this.#ends, index)),
      ...this.#settled(at(this.#ends, index), notes)
    }))
    const asked = Object.keys(this.#tree.questions).filter(id =>
      stops.some(one => one.question === id)
    )
    const firstMet = new Map(
      [...new Set(stops.map(one => one.question))].map((id, i) => [id, i + 1])
    )
    return {
      stops,
      ends,
      numbers: new Map(asked.map(id => [id, must(firstMet.get(id), 'number')]))
    }
  }

  /** Goes on to a question: through what is passed without a word, to where a reader stops. */
  #arrive(state: StopState): Taken {
    const question = must(this.#tree.questions[state.question], 'question')
    const only = onceFor(this.#only, question.id, () => this.#onlyWay(question))
    if (only !== null) return this.#take(only, state.levels, null)
    const key = this.#keyOf(state)
    const before = this.#numbers.get(key)
    const number = before ?? this.#states.push(state) - 1
    this.#numbers.set(key, number)
    return { leads: { stop: number }, notes: [] }
  }

  /** The branch that is taken whatever is answered; null where something is to be asked. */
  #onlyWay(question: Question): Branch | null {
    if (isPassed(this.#tree, question)) {
      if (question.kind === 'measure') return question.unsure
      if (question.kind === 'signs') return question.otherwise
    }
    if (question.kind !== 'choice' || settledBy(this.#tree, question) !== undefined) return null
    const [first, ...others] = waysOfChoice(question)
    return first !== undefined && others.length === 0 ? first.branch : null
  }

  /** Takes a branch: raises what it raises and goes where it leads. */
  #take(branch: Branch, levels: readonly number[], back: StopState['back']): Taken {
    const always = branch.notes.map((note): MetNote => ({ note, when: null }))
    if (branch.raise.includes(EMERGENCY)) return { leads: this.#emergency(branch.notes), notes: [] }
    if ('end' in branch.leads) {
      const reached = this.#raised(levels, branch, branch.leads.end)
      const key = reached.join()
      const before = this.#endNumbers.get(key)
      const end = before ?? this.#ends.push({ levels: reached, emergency: null }) - 1
      this.#endNumbers.set(key, end)
      return { leads: { end }, notes: always }
    }
    const arrived = this.#arrive({
      question: branch.leads.to,
      levels: this.#raised(levels, branch),
      group: 0,
      turn: NO_TURN,
      back
    })
    return { leads: arrived.leads, notes: [...always, ...arrived.notes] }
  }

  #exitsOf(state: StopState): readonly Exit[] {
    const question = must(this.#tree.questions[state.question], 'question')
    if (question.kind === 'signs') return this.#exitsOfSigns(question, state)
    const ways = onceFor(this.#ways, question.id, () =>
      question.kind === 'choice' ? waysOfChoice(question) : waysOfMeasure(this.#tree, question)
    )
    const settled = settledBy(this.#tree, question)
    if (settled !== undefined) return this.#exitsOfSettler(question, settled, state)
    return ways.map(({ on, branch }) => {
      const toSettler = leadsToSettler(this.#tree, question, branch)
      const back = toSettler ? { question: state.question, levels: state.levels } : null
      return this.#exit(on, question.id, this.#take(branch, state.levels, back))
    })
  }

  /** A second answer to what was not sure: it counts as if it had been the first. */
  #exitsOfSettler(
    question: Question,
    settled: string,
    { levels, back }: StopState
  ): readonly Exit[] {
    const first = back === null ? undefined : this.#tree.questions[back.question]
    if (first?.kind !== 'choice' || first.asks !== settled || question.kind !== 'choice') {
      throw new Error(`${question.id} settles ${settled}, which does not lead straight to it`)
    }
    const observation = observationOf(this.#tree.observations, question.asks, 'choice')
    const unsure = must(question.answers.unsure, 'branch')
    const seconds = observation.answers.map(({ id }) => {
      const stands = standsFor(observation, id)
      const branch = stands === undefined ? undefined : first.answers[stands]
      const on: On = { kind: 'answers', among: [id] }
      return this.#exit(on, question.id, this.#take(branch ?? unsure, back?.levels ?? levels, null))
    })
    const none: On = { kind: 'answers', among: ['unsure'] }
    return [...seconds, this.#exit(none, question.id, this.#take(unsure, levels, null))]
  }

  #exitsOfSigns(question: SignsQuestion, state: StopState): readonly Exit[] {
    const { levels, turn } = state
    const groups = onceFor(this.#groups, question.id, () =>
      groupsOf(this.#tree, question, effect => this.#levelsOf(effect))
    )
    const group = groups[state.group]
    // What any sign of the screen notes can have been said, whichever way the screen is left.
    const noted = state.group === 0 ? notesOfSigns(question) : []
    const leave = (on: On, effect: Effect | null, taken: number): Exit => {
      if (effect?.raise.includes(EMERGENCY))
        return { on, leads: this.#emergency(effect.notes), notes: [] }
      const raised = effect === null ? levels : this.#raised(levels, effect)
      const first = taken < 0 ? turn : Math.min(turn, taken)
      if (state.group + 1 < groups.length) {
        const { leads } = this.#arrive({
          ...state,
          levels: raised,
          group: state.group + 1,
          turn: first
        })
        return { on, leads, notes: noted }
      }
      const left = this.#take(question.turns[first] ?? question.otherwise, raised, null)
      const exit = this.#exit(turnTaken(question, first), question.id, left)
      return { ...exit, on, notes: [...noted, ...exit.notes] }
    }
    if (group === undefined) return [leave({ kind: 'any' }, null, -1)]
    const { signs, turns } = group
    return [
      leave({ kind: 'signs', signs, value: 'yes' }, group.yes, turns.yes),
      leave({ kind: 'signs', signs, value: 'unsure' }, group.unsure, turns.unsure),
      leave({ kind: 'signs', signs, value: 'no' }, null, -1)
    ]
  }

  /** An exit whose own branch says its notes because of the answer; what is passed after it says its own. */
  #exit(on: On, question: string, taken: Taken): Exit {
    const notes = taken.notes.map(({ note, when }) => ({ note, when: when ?? { question, on } }))
    return { on, leads: taken.leads, notes }
  }

  #emergency(notes: readonly string[]): Leads {
    const key = `emergency ${notes.join()}`
    const before = this.#endNumbers.get(key)
    const end = before ?? this.#ends.push({ levels: [], emergency: notes }) - 1
    this.#endNumbers.set(key, end)
    return { end }
  }

  #levelsOf(effect: Effect, end?: string): readonly number[] {
    return this.#lenses.map(lens => levelOf(this.#tree, lens, effect, end))
  }

  #raised(levels: readonly number[], effect: Effect, end?: string): readonly number[] {
    return this.#levelsOf(effect, end).map((level, side) => Math.max(level, at(levels, side)))
  }

  #keyOf({ question, levels, group, turn, back }: StopState): string {
    const compiled = diagramsOf(this.#tree)
    // INVARIANT: equal diagrams are equal numbers, so equal keys come to the same whatever is answered.
    const still = (id: string, so: readonly number[]) =>
      so.map((level, side) =>
        compiled.diagrams.join(
          compiled.diagrams.constant(level),
          compiled.from(id, at(this.#lenses, side))
        )
      )
    const returns = back === null ? '' : `${back.question} ${still(back.question, back.levels)}`
    return [question, group, turn, still(question, levels), returns].join('|')
  }

  /** A note that is unfolded is certain at each end: met on every walk to it, or on none. */
  #settled({ levels, emergency }: BareEnd, { always, perhaps }: Pick<End, 'always' | 'perhaps'>) {
    if (emergency !== null) return { always, perhaps }
    const met = (side: number) => (levels[side] ?? 0) > 0
    const unfolded = this.#lenses.flatMap((lens, side) =>
      typeof lens === 'object' ? [{ note: lens.note, met: met(side) }] : []
    )
    const certain = unfolded.filter(one => one.met).map(({ note }) => note)
    return {
      always: [...new Set([...always, ...certain])],
      perhaps: new Map([...perhaps].filter(([note]) => !unfolded.some(one => one.note === note)))
    }
  }

  #outcomeOf({ levels, emergency }: BareEnd) {
    if (emergency !== null) {
      const use = walk(this.#tree, {}).outcome.use
      return { person: EMERGENCY, container: null, batch: null, use }
    }
    const verdictAt = (track: Track) => {
      const level = at(levels, TRACKS.indexOf(track))
      return level === 0 ? null : must(verdictsOf(this.#tree, track)[level - 1], 'verdict')
    }
    return {
      person: verdictAt('person'),
      container: verdictAt('container'),
      batch: verdictAt('batch'),
      use: must(USES[at(levels, TRACKS.length)], 'use')
    }
  }
}

/** Where a branch leads, and the notes that are met on the way there. */
interface Taken {
  readonly leads: Leads
  readonly notes: readonly MetNote[]
}

const NO_TURN = Number.MAX_SAFE_INTEGER

function onceFor<T>(kept: Map<string, T>, id: string, make: () => T): T {
  const before = kept.get(id)
  if (before !== undefined) return before
  const value = make()
  kept.set(id, value)
  return value
}
