import type { Cell, Plan, Spot } from './plan.ts'
import type { Rereading } from './rereading.ts'

/** What one screen comes to at one question: the first turn taken, and the highest grade of its signs. */
export interface Taken {
  readonly turn: number
  readonly grade: number
}

/** By spot, sign and value: the grade. */
export type CellGrades = readonly (readonly (readonly number[])[])[]

/**
 * What has to be remembered of an answer until it is read again: not the answer, but what it comes to at
 * the questions that read it again. Answers that come to the same everywhere are remembered as one.
 */
export class Remembered {
  /** By spot that reads again: which of its observation's ways of reading it has. */
  readonly #readingOf = new Map<number, number>()
  /** By observation: its different ways of reading again, each as one of the spots that have it. */
  readonly #readings: readonly (readonly number[])[]
  /** By observation that is no screen of signs: which of its values are as one. */
  readonly #alike: readonly (readonly number[])[]

  constructor(
    { spots }: Plan,
    { again, observations }: Rereading,
    wayGrades: readonly (readonly number[])[],
    cellGrades: CellGrades
  ) {
    const readers = observations.map(id =>
      spots.flatMap(({ asks }, index) => (asks === id && again[index] ? [index] : []))
    )
    this.#alike = readers.map(of => alike(spots, of, wayGrades))
    this.#readings = readers.map(of => {
      const cache = new Map<string, number>()
      const first: number[] = []
      for (const place of of) {
        const key = readingText((spots[place] as Spot).cells, cellGrades[place] ?? [])
        if (!cache.has(key)) {
          cache.set(key, first.length)
          first.push(place)
        }
        this.#readingOf.set(place, cache.get(key) as number)
      }
      return first
    })
  }

  /** The one of its values alike that stands for a value of a choice or a measure. */
  standIn(observation: number, value: number): number {
    return this.#alike[observation]?.[value] ?? value
  }

  /** The spots at which a screen of signs is read again, one for each way of reading. */
  readings(observation: number): readonly number[] {
    return this.#readings[observation] ?? []
  }

  /** Which of the readings a spot is. */
  readingOf(spot: number): number {
    return this.#readingOf.get(spot) ?? 0
  }
}

function readingText(cells: readonly Cell[], grades: readonly (readonly number[])[]): string {
  return cells
    .map(({ variable, turns }, index) => `${variable}:${turns}:${grades[index] ?? ''}`)
    .sort()
    .join(' ')
}

/** For each value the first that no question reading again tells from it. */
function alike(
  spots: readonly Spot[],
  readers: readonly number[],
  wayGrades: readonly (readonly number[])[]
): readonly number[] {
  const first = spots[readers[0] ?? -1]
  if (first === undefined || first.cells.length > 0) return []
  let parts = first.ways.map(() => 0)
  for (const reader of readers) {
    const cache = new Map<string, number>()
    const { ways } = spots[reader] as Spot
    parts = parts.map((part, value) => {
      const key = `${part} ${ways[value]?.to} ${wayGrades[reader]?.[value]}`
      if (!cache.has(key)) cache.set(key, cache.size)
      return cache.get(key) as number
    })
  }
  return parts.map(part => parts.indexOf(part))
}
