import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate.ts'
import { callOf } from '../../src/evaluate/facts.ts'
import { type Answers, signsOf } from '../../src/tree/answers.ts'
import { noneOf, unsureOf } from '../../src/tree/tell.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { rawCall } from '../helpers/random-call.ts'
import { shippedTrees } from '../helpers/shipped.ts'

const trees = await shippedTrees()

/** Every pair that a caller is asked together who rules out all signs and is sure of nothing else. */
function pairsOf(tree: Tree): readonly string[] {
  const pairs: string[] = []
  let answers: Answers = {}
  for (;;) {
    const { walk, sweptWith } = evaluate(tree, answers)
    const observation = tree.observations[walk.asks?.observation ?? '']
    if (observation === undefined) return pairs
    if (sweptWith !== null) pairs.push(`${observation.id} + ${sweptWith.id}`)
    answers =
      observation.kind === 'signs' ? noneOf(answers, observation) : unsureOf(answers, observation)
  }
}

test('screens of signs that follow each other are asked together, on the trees that have them', () => {
  const pairs = trees.map(tree => [tree.id, pairsOf(tree)] as const)
  expect(Object.fromEntries(pairs.filter(([, each]) => each.length > 0))).toEqual({
    'kombucha-culture': ['container-signs + culture-signs'],
    'kombucha-jar': ['container-signs + jar-signs'],
    'vinegar-mother': ['vinegar-look + vinegar-smell']
  })
})

describe.each(trees.map(tree => [tree.id, tree] as const))('in a call about %s', (_, tree) => {
  test('what is asked together was not told, is not about people, and would come next', () => {
    fc.assert(
      fc.property(rawCall(tree), facts => {
        const { answers } = callOf(tree, facts)
        const { walk, sweptWith } = evaluate(tree, answers)
        if (sweptWith === null) return
        const now = tree.observations[walk.asks?.observation ?? '']
        expect.assert(now?.kind === 'signs')
        for (const each of [now, sweptWith]) {
          expect(each.about).not.toBe('person')
          expect(signsOf(answers, each.id)).toEqual({})
        }
        for (const sign of now.signs) {
          const seen = noneOf({ [now.id]: { [sign.id]: 'yes' } }, now)
          const { walk: after } = evaluate(tree, { ...answers, ...seen })
          expect(after.asks?.observation).toBe(sweptWith.id)
        }
      }),
      { numRuns: 200, seed: 1 }
    )
  })
})
