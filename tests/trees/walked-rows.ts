import { expect } from 'vitest'
import { walk } from '../../src/evaluate/walk.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { usualExcept } from '../helpers/usual.ts'
import type { Row } from './kombucha-jar-rows.ts'

/** Named so that a failing row tells what it says and where that is published. */
export const titled = (rows: readonly Row[]) =>
  rows.map((row, i) => [`${row.row}.${i} ${row.finding} (${row.source})`, row] as const)

/** Walks a row, everything else usual, and holds what must come out against what does. */
export function expectRow(tree: Tree, { told, expect: wanted }: Row): void {
  const { finished, outcome } = walk(tree, usualExcept(tree, told))
  expect(finished).toBe(true)
  const found = Object.keys(wanted).map(side => [side, outcome[side as 'batch']])
  expect(Object.fromEntries(found)).toEqual(wanted)
}
