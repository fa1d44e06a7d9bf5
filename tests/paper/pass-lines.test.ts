import { expect, test } from 'vitest'
import { passLines } from '../../src/paper/batch-card.tsx'
import { loadShipped } from '../helpers/shipped.ts'

const { trees, knowHow } = await loadShipped()
const linesOf = (id: string) => {
  const tree = trees.find(each => each.id === id)
  if (tree === undefined) throw new Error(`no tree ${id}`)
  return passLines(tree, knowHow.allowed[id] ?? []).map(({ day, ph, kinds }) => ({
    day,
    ph,
    kinds: kinds.map(({ answer }) => answer).sort()
  }))
}

test('kombucha passes from day 7, at a pH of 4.2 or lower (Niagara Region; common practice)', () => {
  expect(linesOf('kombucha-jar')).toEqual([{ day: 7, ph: 4.2, kinds: [] }])
})

test('kraut and pickles pass from day 28 at 4.6, kimchi and kvass from day 7 at 4.2 (USDA; own caution)', () => {
  expect(linesOf('brined-vegetables')).toEqual([
    { day: 28, ph: 4.6, kinds: ['cucumber-pickles', 'sauerkraut'] },
    { day: 7, ph: 4.2, kinds: ['beet-kvass', 'kimchi'] }
  ])
})
