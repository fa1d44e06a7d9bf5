import { describe, test } from 'vitest'
import type { Tree } from '../../src/tree/tree.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { STARTER_LIMITS } from './sourdough-starter-limits.ts'
import { STARTER_ROWS } from './sourdough-starter-rows.ts'
import { expectRow, titled } from './walked-rows.ts'

const { trees } = await loadShipped()
const tree = trees.find(({ id }) => id === 'sourdough-starter') as Tree

describe('every row on starters has a walk to its verdict', () => {
  test.each(titled(STARTER_ROWS))('%s', (_, row) => expectRow(tree, row))
})

describe('every age counts on both sides', () => {
  test.each(titled(STARTER_LIMITS))('%s', (_, row) => expectRow(tree, row))
})
