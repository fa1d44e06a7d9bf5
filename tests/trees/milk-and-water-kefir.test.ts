import { describe, test } from 'vitest'
import type { Tree } from '../../src/tree/tree.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { KEFIR_LIMITS } from './milk-and-water-kefir-limits.ts'
import { KEFIR_ROWS } from './milk-and-water-kefir-rows.ts'
import { expectRow, titled } from './walked-rows.ts'

const { trees } = await loadShipped()
const tree = trees.find(({ id }) => id === 'milk-and-water-kefir') as Tree

describe('every row on kefir and yogurt has a walk to its verdict', () => {
  test.each(titled(KEFIR_ROWS))('%s', (_, row) => expectRow(tree, row))
})

describe('every limit of acid and time counts on both sides', () => {
  test.each(titled(KEFIR_LIMITS))('%s', (_, row) => expectRow(tree, row))
})
