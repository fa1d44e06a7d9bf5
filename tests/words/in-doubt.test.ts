import { expect, test } from 'vitest'
import { reportOf } from '../../src/report/report.ts'
import { NOTHING_YET, type Outcome, verdict } from '../../src/tree/caution.ts'
import { say } from '../../src/words/say.ts'
import { cautionText } from '../../src/words/tree-texts.ts'
import { createWords } from '../../src/words/words.ts'
import { loadShipped } from '../helpers/shipped.ts'

const { trees, sources, words } = await loadShipped()
const english = createWords(words, 'en')

/** Every verdict on a batch that a tree gives. */
const batches = trees.flatMap(tree =>
  tree.verdicts
    .filter(({ track }) => track === 'batch')
    .map(({ id }) => ({ tree, id, goes: verdict(tree, id).ceiling === 'never' }))
)

test.each(batches)(
  '$tree.id, $id: whether "if in doubt, throw it out" is said',
  ({ tree, id, goes }) => {
    const heard = (outcome: Partial<Outcome>) => {
      const report = reportOf(tree, { ...NOTHING_YET, ...outcome }, null, new Date('2026-11-25'))
      return say(report, english, sources).sections.flatMap(({ lines }) => lines)
    }
    const inDoubt = cautionText(english, tree.id, 'when-in-doubt')
    expect(heard({ batch: id, use: 'not-yet' }).includes(inDoubt)).toBe(!goes)
    // Somebody who needs help is asked to keep it.
    expect(heard({ batch: id, person: 'doctor-today', use: 'never' })).not.toContain(inDoubt)
  }
)

test('both kinds of batch are among them', () => {
  expect(new Set(batches.map(({ goes }) => goes))).toEqual(new Set([true, false]))
})
