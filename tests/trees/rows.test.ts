import { describe, expect, test } from 'vitest'
import { walk } from '../../src/evaluate/walk.ts'
import type { GuidanceRow } from '../../src/load/load.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { usualExcept } from '../helpers/usual.ts'

const { trees, rows } = await loadShipped()

/** Named so that a failing row tells what it says and where that is published. */
const titled = (all: readonly GuidanceRow[]) =>
  all.map((row, at) => [`${at}. ${row.title} (${row.source})`, row] as const)

describe.each(trees.map(tree => [tree.id, tree] as const))('every row on %s', (id, tree) => {
  test.each(titled(rows[id] ?? []))('%s', (_, { told, expect: wanted }) => {
    const { finished, outcome } = walk(tree, usualExcept(tree, told))
    expect(finished).toBe(true)
    const found = Object.keys(wanted).map(side => [side, outcome[side as 'batch']])
    expect(Object.fromEntries(found)).toEqual(wanted)
  })
})

test('no ferment is without rows', () => {
  expect(trees.filter(({ id }) => (rows[id] ?? []).length < 50).map(({ id }) => id)).toEqual([])
})
