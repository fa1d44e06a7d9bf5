import { describe, expect, test } from 'vitest'
import { afterNotes } from '../../src/evaluate/after.ts'
import { evaluate } from '../../src/evaluate/evaluate.ts'
import type { Answers } from '../../src/tree/answers.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { loadShipped } from '../helpers/shipped.ts'

const { trees } = await loadShipped()
const tree = trees.find(({ id }) => id === 'kombucha-culture') as Tree

// How a culture rests: common practice, no source.
describe('how it is stored and fed is asked once the outcome is told', () => {
  test.each([
    ['discs-stick-out', 'keep-discs-under'],
    ['not-fed-in-weeks', 'feed-the-resting-jar'],
    ['rests-in-the-fridge', 'rest-it-in-the-room'],
    ['loose-cloth', 'cover-with-tight-cloth']
  ])('%s says what to change and changes no verdict', (sign, note) => {
    const none = { 'discs-stick-out': 'no', 'not-fed-in-weeks': 'no', 'rests-in-the-fridge': 'no' }
    const habits = {
      'culture-habits': { ...none, 'loose-cloth': 'no', [sign]: 'yes' }
    } as Answers
    const before = evaluate(tree, {})
    const after = evaluate(tree, habits)
    expect(after.walk.outcome).toEqual(before.walk.outcome)
    expect(afterNotes(tree, habits)).toEqual([note])
  })
})
