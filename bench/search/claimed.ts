import type { Open } from '../../src/diagrams/reach.ts'
import { type Costs, type Exit, exitsOfOne, exitsOfSigns } from './exits.ts'
import type { Grades, Levels } from './grades.ts'
import { NONE, type Plan, type Spot } from './plan.ts'
import { type CellGrades, Remembered, type Taken } from './remembered.ts'
import type { Rereading } from './rereading.ts'

/** A plan as one claim sees it: what each question makes of an answer, in grades. */
export class Claimed {
  readonly #plan: Plan
  readonly #ways: readonly (readonly number[])[]
  readonly #cells: CellGrades
  readonly #remembered: Remembered

  constructor(plan: Plan, rereading: Rereading, levels: Levels, grades: Grades) {
    const graded = (all: readonly number[]) => all.map(level => grades.of[level] ?? 0)
    this.#plan = plan
    this.#ways = levels.ways.map(graded)
    this.#cells = levels.cells.map(of => of.map(graded))
    this.#remembered = new Remembered(plan, rereading, this.#ways, this.#cells)
  }

  /** What a question makes of answers not read before; `place` is that of what is read again, else below 0. */
  first(index: number, place: number, open: Open, costs: Costs): readonly Exit[] {
    const spot = this.#plan.spots[index] as Spot
    const grades = this.#ways[index] ?? []
    if (spot.variable !== NONE) {
      return exitsOfOne(spot, grades, open, costs, value =>
        place < 0 ? -1 : this.#remembered.standIn(place, value)
      )
    }
    const reading = (one: number) => {
      const { cells, ways } = this.#plan.spots[one] as Spot
      return { cells, grades: this.#cells[one] ?? [], turns: ways.length - 1 }
    }
    const again = place < 0 ? [] : this.#remembered.readings(place).map(reading)
    return exitsOfSigns(reading(index), again, grades, open, costs)
  }

  /** What a question makes of an answer remembered. */
  again(exit: number, found: Exit): Exit {
    const { variable } = this.#plan.spots[exit] as Spot
    const none = { taken: [], standIn: -1, cost: 0, picks: null }
    const grades = this.#ways[exit] ?? []
    if (variable !== NONE) {
      return { ...none, way: found.standIn, grade: grades[found.standIn] ?? 0 }
    }
    const { turn, grade } = found.taken[this.#remembered.readingOf(exit)] as Taken
    return { ...none, way: turn, grade: Math.max(grade, grades[turn] ?? 0) }
  }
}
