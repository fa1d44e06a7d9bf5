import { describe, expect, test } from 'vitest'
import { walk } from '../../src/evaluate/walk.ts'
import { isUpperBound } from '../../src/prove/claim.ts'
import { prove } from '../../src/prove/prove.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { usualExcept } from '../helpers/usual.ts'
import { DOUBT_ROWS } from './brined-vegetables-doubts.ts'
import { VEGETABLE_LIMITS } from './brined-vegetables-limits.ts'
import { SIGN_ROWS } from './brined-vegetables-rows.ts'
import { STOP_ROWS } from './brined-vegetables-stops.ts'
import { ORDINARY } from './brined-vegetables-told.ts'
import { VESSEL_ROWS } from './brined-vegetables-vessels.ts'
import type { Row } from './kombucha-jar-rows.ts'

const { trees, places, sources } = await loadShipped()
const tree = trees.find(({ id }) => id === 'brined-vegetables') as Tree

/** Named so that a failing row tells what it says and where that is published. */
const titled = (rows: readonly Row[]) =>
  rows.map((row, i) => [`${row.row}.${i} ${row.finding} (${row.source})`, row] as const)

const outcomeOf = ({ told, expect: wanted }: Row) => {
  const { finished, outcome } = walk(tree, usualExcept(tree, { ...ORDINARY, ...told }))
  expect(finished).toBe(true)
  return Object.fromEntries(Object.keys(wanted).map(side => [side, outcome[side as 'batch']]))
}

describe('every row on vegetables has a walk to its verdict', () => {
  test.each(titled([...SIGN_ROWS, ...STOP_ROWS, ...VESSEL_ROWS, ...DOUBT_ROWS]))('%s', (_, row) => {
    expect(outcomeOf(row)).toEqual(row.expect)
  })
})

describe('every limit on vegetables holds on both sides', () => {
  test.each(titled(VEGETABLE_LIMITS))('%s', (_, row) => {
    expect(outcomeOf(row)).toEqual(row.expect)
  })
})

describe('the rules of the tree', () => {
  test('are all proved over the whole answer space', () => {
    const all = prove(tree, places[tree.id], sources)
    const held = all.find(({ property }) => property === 'rules-hold')
    expect(held?.findings).toEqual([])
    expect(held?.counts).toEqual({ proved: tree.rules.length, refuted: 0 })
  })

  test('number at least twenty-five, a quarter of them upper bounds', () => {
    const upper = tree.rules.filter(({ claim }) => isUpperBound(claim))
    expect(tree.rules.length).toBeGreaterThanOrEqual(25)
    expect(upper.length).toBeGreaterThanOrEqual(tree.rules.length / 4)
  })
})
