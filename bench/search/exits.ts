import type { Open } from '../../src/diagrams/reach.ts'
import type { Cell, Spot } from './plan.ts'
import type { Taken } from './remembered.ts'

/** Values picked on the way, the last one first. */
export interface Picks {
  readonly variable: number
  readonly value: number
  readonly before: Picks | null
}

/** What some open answers to a question make of it, by the fewest unusual ones. */
export interface Exit {
  readonly way: number
  readonly grade: number
  /** What is remembered of them: at each further reading, or the value that stands in; none: nothing. */
  readonly taken: readonly Taken[]
  readonly standIn: number
  readonly cost: number
  readonly picks: Picks | null
}

/** What an unusual value costs, by coordinate and value. */
export type Costs = readonly (readonly number[])[]

/** Each different thing that open answers to a choice or a measure can make of its question. */
export function exitsOfOne(
  { variable, ways }: Spot,
  grades: readonly number[],
  open: Open,
  costs: Costs,
  standIn: (value: number) => number
): readonly Exit[] {
  const best = new Map<string, Exit>()
  for (const [value, { to }] of ways.entries()) {
    if (!open[variable]?.[value]) continue
    const cost = costs[variable]?.[value] ?? 0
    const stands = standIn(value)
    const grade = grades[value] ?? 0
    const key = `${to} ${grade} ${stands}`
    const before = best.get(key)
    if (before !== undefined && before.cost <= cost) continue
    const picks = { variable, value, before: null }
    best.set(key, { way: value, grade, taken: [], standIn: stands, cost, picks })
  }
  return [...best.values()]
}

/** One way of reading a screen: its signs, their grades, and its number of turns. */
export interface Reading {
  readonly cells: readonly Cell[]
  readonly grades: readonly (readonly number[])[]
  readonly turns: number
}

interface Part {
  readonly taken: readonly Taken[]
  readonly cost: number
  readonly picks: Picks | null
}

/**
 * Each different thing that open answers to a screen of signs come to, here and wherever the screen is
 * read again: sign by sign, never by listing their combinations.
 */
export function exitsOfSigns(
  here: Reading,
  again: readonly Reading[],
  wayGrades: readonly number[],
  open: Open,
  costs: Costs
): readonly Exit[] {
  const readings = [here, ...again]
  const none = readings.map(({ turns }) => ({ turn: turns, grade: 0 }))
  const variables = new Set(readings.flatMap(({ cells }) => cells.map(cell => cell.variable)))
  let parts: readonly Part[] = [{ taken: none, cost: 0, picks: null }]
  for (const variable of variables) {
    const values = valuesOf(readings, variable, open, costs)
    // A sign that cannot change anything here is left for the usual.
    if (values.length === 1 && values[0]?.idle) continue
    const best = new Map<string, Part>()
    for (const part of parts) {
      for (const { value, taken, cost } of values) {
        const both = part.taken.map((one, index) => joined(one, taken[index] as Taken))
        const key = keyOf(both)
        const before = best.get(key)
        const sum = part.cost + cost
        if (before !== undefined && before.cost <= sum) continue
        best.set(key, { taken: both, cost: sum, picks: { variable, value, before: part.picks } })
      }
    }
    parts = [...best.values()]
  }
  return parts.map(({ taken: [local, ...rest], cost, picks }) => {
    const { turn, grade } = local as Taken
    const all = Math.max(grade, wayGrades[turn] ?? 0)
    return { way: turn, grade: all, taken: rest, standIn: -1, cost, picks }
  })
}

/** The open values of a sign that come to different things, each by its cheapest. */
function valuesOf(readings: readonly Reading[], variable: number, open: Open, costs: Costs) {
  const of = readings.map(({ cells }) => cells.findIndex(cell => cell.variable === variable))
  const best = new Map<
    string,
    { value: number; taken: readonly Taken[]; cost: number; idle: boolean }
  >()
  for (const [value, isOpen] of (open[variable] ?? []).entries()) {
    if (!isOpen) continue
    const taken = readings.map(({ cells, grades, turns }, index) => ({
      turn: cells[of[index] as number]?.turns[value] ?? turns,
      grade: grades[of[index] as number]?.[value] ?? 0
    }))
    const idle = taken.every(
      ({ turn, grade }, index) => turn === readings[index]?.turns && grade === 0
    )
    const cost = costs[variable]?.[value] ?? 0
    const key = keyOf(taken)
    if ((best.get(key)?.cost ?? Number.POSITIVE_INFINITY) > cost) {
      best.set(key, { value, taken, cost, idle })
    }
  }
  return [...best.values()]
}

const joined = (a: Taken, b: Taken): Taken => ({
  turn: Math.min(a.turn, b.turn),
  grade: Math.max(a.grade, b.grade)
})

/** Equal for what comes to the same everywhere. */
export const keyOf = (taken: readonly Taken[]): string => {
  let key = ''
  for (const { turn, grade } of taken) key += `${turn}.${grade} `
  return key
}
