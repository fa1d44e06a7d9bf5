import { expect, test } from 'vitest'
import { passLines } from '../../src/tree/batch-card.ts'
import { loadShipped } from '../helpers/shipped.ts'

const { trees, knowHow } = await loadShipped()
const linesOf = (id: string) => {
  const tree = trees.find(each => each.id === id)
  if (tree === undefined) throw new Error(`no tree ${id}`)
  return passLines(tree, knowHow.allowed[id] ?? []).map(({ kinds, ...limits }) => ({
    ...limits,
    kinds: kinds.map(({ answer }) => answer).sort()
  }))
}

test('kombucha passes from day 7 to 30, at a pH from 2.5 to 4.2 (relayed by a magazine; own caution)', () => {
  expect(linesOf('kombucha-jar')).toEqual([
    { day: 7, lastDay: 30, ph: 4.2, lowestPh: 2.5, kinds: [] }
  ])
})

test('kraut and pickles pass from day 28 at 4.6, kimchi and kvass from day 7 at 4.2 (USDA; own caution)', () => {
  expect(linesOf('brined-vegetables')).toEqual([
    { day: 28, lastDay: null, ph: 4.6, lowestPh: null, kinds: ['cucumber-pickles', 'sauerkraut'] },
    { day: 7, lastDay: null, ph: 4.2, lowestPh: null, kinds: ['beet-kvass', 'kimchi'] }
  ])
})
