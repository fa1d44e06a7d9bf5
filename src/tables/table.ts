import { verdictsOf } from '../tree/caution.ts'
import type { Lens } from '../tree/lens.ts'
import type { Range } from '../tree/observation.ts'
import { type Tree, USES } from '../tree/tree.ts'

/** A decision table: every set of answers that it speaks of fits exactly one of its rows. */
export interface Table {
  readonly lens: Lens
  /** Null for a whole table; otherwise which of several that are complete only together. */
  readonly part: TablePart | null
  /** In the order of the tree. */
  readonly inputs: readonly Input[]
  /** What the table can give, gentlest first. */
  readonly outputs: readonly string[]
  readonly rows: readonly TableRow[]
}

/** One of the tables that one too long for reading was split into. */
export interface TablePart {
  readonly number: number
  readonly of: number
  /** What all of its rows have in common; empty for the rows of emergencies. */
  readonly where: readonly { readonly input: Input; readonly cell: Among | Within }[]
}

/** A column to be filled in: an answer by its id, or a number in the measure's unit. */
export type Input = AnswerInput | NumberInput

export interface AnswerInput {
  /** `told`: whether there is a reading of a measure at all. */
  readonly kind: 'choice' | 'sign' | 'told'
  readonly observation: string
  readonly sign: string | null
  readonly values: readonly string[]
}

export interface NumberInput {
  readonly kind: 'number'
  readonly observation: string
  /** The lowest that it can truly be, what was read, the highest; of a count only what was counted. */
  readonly end: 'low' | 'reading' | 'high'
}

/** What a row asks of an input; null where any answer will do. */
export type Cell = Among | Within | null
export interface Among {
  readonly among: readonly string[]
}
export interface Within {
  readonly within: Range
}

export interface TableRow {
  /** One for each input of the table. */
  readonly cells: readonly Cell[]
  /** An index into the table's outputs. */
  readonly level: number
  /** The sources of what decides it on the plainest walk that fits it, by id. */
  readonly because: readonly string[]
}

/** A reading there is. */
export const MEASURED = 'measured'

/** What each level of a lens is called, by level: ids of verdicts, uses, or whether a note is said. */
export function outputsOf(tree: Tree, lens: Lens): readonly string[] {
  if (typeof lens === 'object') return ['no', 'yes']
  return lens === 'use' ? USES : ['none', ...verdictsOf(tree, lens)]
}
