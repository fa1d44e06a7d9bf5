import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate.ts'
import { callOf } from '../../../src/evaluate/facts.ts'
import { callSummary } from '../../../src/places/desk/call-summary.ts'
import { createWords } from '../../../src/words/words.ts'
import { rawCall } from '../../helpers/random-call.ts'
import { loadShipped } from '../../helpers/shipped.ts'

const { trees, words } = await loadShipped()
const english = createWords(words, 'en')

describe.each(trees.map(tree => [tree.id, tree] as const))('a call about %s', (_, tree) => {
  test('is summed up alike whatever was told of people, with edition and what was told', () => {
    fc.assert(
      fc.property(rawCall(tree), facts => {
        const summed = (told: typeof facts) => {
          const { answers, either } = callOf(tree, told)
          return callSummary(evaluate(tree, answers, either), english, 'specialist')
        }
        const lines = summed(facts)
        const jarAlone = facts.filter(
          ({ observation }) => tree.observations[observation]?.about !== 'person'
        )
        expect(lines).toEqual(summed(jarAlone))
        expect(lines[1]).toContain(`Edition ${tree.edition}`)
        expect(lines.at(-1)).toContain('nothing about people')
        const told = lines.slice(4, lines.indexOf('', 4))
        expect(told).toHaveLength(
          Math.max(1, new Set(jarAlone.map(({ observation }) => observation)).size)
        )
      }),
      { numRuns: 60 }
    )
  })
})
