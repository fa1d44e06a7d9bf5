import { describe, test } from 'vitest'
import type { Tree } from '../../src/tree/tree.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { OUTSIDE_ROWS } from './outside-this-tool-rows.ts'
import { NOT_FOR_THEM_ROWS, PEOPLE_ROWS } from './shared-rows.ts'
import { expectRow, titled } from './walked-rows.ts'

const { trees } = await loadShipped()
const tree = trees.find(({ id }) => id === 'outside-this-tool') as Tree

describe('every row on foods outside has a walk to its verdict', () => {
  test.each(titled([...OUTSIDE_ROWS, ...PEOPLE_ROWS, ...NOT_FOR_THEM_ROWS]))('%s', (_, row) =>
    expectRow(tree, row)
  )
})
