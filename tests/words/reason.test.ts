import { expect, test } from 'vitest'
import { walk } from '../../src/evaluate/walk.ts'
import type { Answers } from '../../src/tree/answers.ts'
import { reasonFor } from '../../src/words/reason.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { usualExcept } from '../helpers/usual.ts'

const { trees } = await loadShipped()
const tree = trees.find(({ id }) => id === 'brined-vegetables') as (typeof trees)[number]

/** The reason of the batch's verdict, and every note that was met. */
function reasoned(told: Answers) {
  const { outcome } = walk(tree, usualExcept(tree, { 'salt-share': 'unsure', ...told }))
  return { notes: outcome.notes, reason: reasonFor(tree, outcome.batch ?? '', outcome.notes) }
}

test('the reason is the note of the answer that brought the verdict, not the first that was met', () => {
  const { notes, reason } = reasoned({
    'brine-kind': 'pepper-mash',
    'brine-signs': { slime: 'yes' }
  })
  expect(notes[0]).toBe('mash-is-a-sauce')
  expect(reason).toBe('slime-in-the-brine')
})

test('the note of an end is its reason too', () => {
  const kimchi: Answers = {
    'brine-kind': 'kimchi',
    'brine-ph': { low: 4.35, reading: 4.4, high: 4.45 }
  }
  expect(reasoned({ ...kimchi, 'days-in-brine': { low: 9, reading: 9, high: 9 } }).reason).toBe(
    'not-sour-enough'
  )
})

test('a verdict that withholds nothing keeps its own words, and so does fur without a note', () => {
  expect(reasoned({ 'brine-signs': { cloudy: 'yes' } }).reason).toBeNull()
  expect(reasoned({ 'surface-growth': 'dry-fuzzy' }).reason).toBeNull()
})
