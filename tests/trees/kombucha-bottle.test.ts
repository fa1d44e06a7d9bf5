import { describe, expect, test } from 'vitest'
import { withDerived } from '../../src/machine/derived/derive.ts'
import { isInterval } from '../../src/tree/answers.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { days } from './told.ts'

const { trees } = await loadShipped()
const tree = trees.find(({ id }) => id === 'kombucha-bottle') as Tree

describe('the pressure is worked out from what people know', () => {
  const told = (bottle: string, sugar: number) => ({
    'bottle-sugar': days(sugar),
    'bottle-days': days(1),
    'bottle-warmth': days(77),
    'bottle-headspace': days(5),
    'bottle-kind': bottle
  })
  const shareOf = (answers: Parameters<typeof withDerived>[1]) => {
    const found = withDerived(tree, answers)['bottle-pressure']
    if (!found || !isInterval(found)) throw new Error('nothing was worked out')
    return found
  }
  test('as a share of what its kind bears', () => {
    expect(shareOf(told('swing-top', 15)).high).toBeCloseTo((100 * 2.386) / 4, 0)
    expect(shareOf(told('square', 15)).high).toBeCloseTo((100 * 2.386) / 2, 0)
  })
  test('and glass of no known kind counts as glass that bears little', () => {
    expect(shareOf(told('thin-or-worn', 15))).toEqual(shareOf(told('square', 15)))
  })
  test('and is unsure where the sugar is not known', () => {
    const answers = { ...told('beer', 1), 'bottle-sugar': 'unsure' }
    expect(withDerived(tree, answers)['bottle-pressure']).toBe('unsure')
  })
})
