import { walk } from '../../src/evaluate/walk.ts'
import { variableName } from '../../src/tables/names.ts'
import type { Cell, Input, Table, TableRow } from '../../src/tables/table.ts'
import { type Answers, isInterval, measureOf, signsOf } from '../../src/tree/answers.ts'
import { effectiveChoice } from '../../src/tree/effective.ts'
import type { Lens } from '../../src/tree/lens.ts'
import { holds } from '../../src/tree/range.ts'
import type { Tree } from '../../src/tree/tree.ts'
import type { Context } from './outside-engine.ts'

/** What somebody who fills in a table writes for an input, read straight from the answers. */
export function entryFor(tree: Tree, input: Input, answers: Answers): string | number | undefined {
  const { observation: id } = input
  const observation = tree.observations[id]
  const told = measureOf(answers, id)
  if (input.kind === 'number') return isInterval(told) ? told[input.end] : undefined
  if (input.kind === 'told') return told === 'unsure' ? 'unsure' : 'measured'
  if (input.kind === 'sign') return signsOf(answers, id)[String(input.sign)] ?? 'no'
  if (observation?.kind !== 'choice') throw new Error(`${id} is no choice`)
  return effectiveChoice(tree, observation, answers)?.answer
}

/** Every input of some tables, each once, by the name of its variable. */
export function inputsOf(tables: readonly Table[]): ReadonlyMap<string, Input> {
  return new Map(tables.flatMap(({ inputs }) => inputs.map(input => [nameOf(input), input])))
}

/** What somebody who fills in tables writes for all of their inputs. */
export function contextOf(
  tree: Tree,
  inputs: ReadonlyMap<string, Input>,
  answers: Answers
): Context {
  return Object.fromEntries(
    [...inputs].map(([name, input]) => [name, entryFor(tree, input, answers)])
  )
}

const names = new WeakMap<Input, string>()
function nameOf(input: Input): string {
  const name = names.get(input) ?? variableName(input)
  names.set(input, name)
  return name
}

/** What `walk()` says on one side, in the words of the tables. */
export function saidByWalk(tree: Tree, lens: Lens, answers: Answers): string {
  const { finished, outcome } = walk(tree, answers)
  if (!finished) throw new Error('an answer is missing')
  if (typeof lens === 'object') return outcome.notes.includes(lens.note) ? 'yes' : 'no'
  return lens === 'use' ? outcome.use : (outcome[lens] ?? 'none')
}

/** The second reading of a cell, apart from the engine's. */
export function meetsCell(cell: Cell, entry: string | number | undefined): boolean {
  if (cell === null) return true
  if ('among' in cell) return cell.among.some(one => one === entry)
  return typeof entry === 'number' && holds(cell.within, entry)
}

/** The rows of all the tables that a context fits. */
export function rowsMet(tables: readonly Table[], context: Context): readonly TableRow[] {
  return tables.flatMap(({ inputs, rows }) => {
    const entries = inputs.map(input => context[nameOf(input)])
    return rows.filter(({ cells }) => cells.every((cell, i) => meetsCell(cell, entries[i])))
  })
}

/** The tables that speak of a context: of several parts one, besides that of the emergencies. */
export function speaking(tables: readonly Table[], context: Context): readonly Table[] {
  return tables.filter(({ part }) =>
    (part?.where ?? []).every(({ input, cell }) => meetsCell(cell, context[nameOf(input)]))
  )
}
