import { must } from '../tree/must.ts'
import { TRACKS } from '../tree/observation.ts'
import type { Course, Halt } from './course.ts'

/** By verdict said first: the share of walks at each number of screens, by that number. */
export type Lengths = Map<string, number[]>

/** What walks came to, each counted with its share. */
export class Tally {
  /** Screens to the end. */
  readonly ended: Lengths = new Map()
  /** Screens until person, container, batch and use were decided. */
  readonly settled: Lengths = new Map()
  /** Outcomes on the four sides. */
  readonly outcomes = new Map<number, number>()
  /** How often an observation was asked. */
  readonly asked = new Map<string, number>()
  /** Walks whose batch is to be looked at again. */
  waits = 0
  /** Walks at whose end a settled observation was unsure; of them those that wait. */
  unsure = 0
  waitsUnsure = 0
  readonly #course: Course

  constructor(course: Course) {
    this.#course = course
  }

  /** A share of walks comes to a halt after so many screens; before, it was settled or not. */
  arrive({ route, sides }: Halt, wasSettled: boolean, screens: number, share: number): void {
    if (sides.settled && !wasSettled) add(this.settled, this.#first(sides), screens, share)
    if (route.asks !== null) {
      this.asked.set(route.asks, (this.asked.get(route.asks) ?? 0) + share)
      return
    }
    add(this.ended, this.#first(sides), screens, share)
    this.outcomes.set(sides.id, (this.outcomes.get(sides.id) ?? 0) + share)
    const waits = this.#course.sides.verdict(sides, 'batch') === 'wait-and-recheck'
    if (waits) this.waits += share
    if (route.unsure) this.unsure += share
    if (waits && route.unsure) this.waitsUnsure += share
  }

  #first(sides: Halt['sides']): string {
    const said = TRACKS.map(track => this.#course.sides.verdict(sides, track))
    return said.find(verdict => verdict !== undefined) ?? 'nothing'
  }
}

function add(lengths: Lengths, verdict: string, screens: number, share: number): void {
  const of = lengths.get(verdict) ?? []
  lengths.set(verdict, of)
  while (of.length <= screens) of.push(0)
  of[screens] = must(of[screens], 'share') + share
}

/** How long some walks are. */
export interface Length {
  /** The share of all walks that these are. */
  readonly share: number
  readonly mean: number
  readonly longest: number
  /** Of the number of screens, not of its mean. */
  readonly deviation: number
}

/** The length of all walks, or of those with one verdict. */
export function lengthOf(lengths: Lengths, verdict?: string): Length {
  const lists = verdict === undefined ? [...lengths.values()] : [lengths.get(verdict) ?? []]
  let [share, sum, squares, longest] = [0, 0, 0, 0]
  for (const list of lists) {
    for (const [screens, part] of list.entries()) {
      share += part
      sum += part * screens
      squares += part * screens * screens
      if (part > 0) longest = Math.max(longest, screens)
    }
  }
  const mean = share === 0 ? 0 : sum / share
  const variance = share === 0 ? 0 : Math.max(0, squares / share - mean * mean)
  return { share, mean, longest, deviation: Math.sqrt(variance) }
}
