import { describe, test } from 'vitest'
import type { Tree } from '../../src/tree/tree.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { VINEGAR_LIMITS } from './vinegar-mother-limits.ts'
import { VINEGAR_ROWS } from './vinegar-mother-rows.ts'
import { expectRow, titled } from './walked-rows.ts'

const { trees } = await loadShipped()
const tree = trees.find(({ id }) => id === 'vinegar-mother') as Tree

describe('every row on vinegar has a walk to its verdict', () => {
  test.each(titled(VINEGAR_ROWS))('%s', (_, row) => expectRow(tree, row))
})

describe('every limit of acid and weeks counts on both sides', () => {
  test.each(titled(VINEGAR_LIMITS))('%s', (_, row) => expectRow(tree, row))
})
