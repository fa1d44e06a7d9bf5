import { describe, test } from 'vitest'
import type { Tree } from '../../src/tree/tree.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { CULTURE_LIMITS, CULTURE_ROWS } from './kombucha-culture-rows.ts'
import { LID_AND_GLASS } from './lid-and-glass-rows.ts'
import { expectRow, titled } from './walked-rows.ts'

const { trees } = await loadShipped()
const tree = trees.find(({ id }) => id === 'kombucha-culture') as Tree

describe('every row on cultures has a walk to its verdict', () => {
  test.each(titled(CULTURE_ROWS))('%s', (_, row) => expectRow(tree, row))
})

describe('lid and glass', () => {
  test.each(titled(LID_AND_GLASS))('%s', (_, row) => expectRow(tree, row))
})

describe('every limit counts on both sides', () => {
  test.each(titled(CULTURE_LIMITS))('%s', (_, row) => expectRow(tree, row))
})
