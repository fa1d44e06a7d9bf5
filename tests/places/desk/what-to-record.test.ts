import fc from 'fast-check'
import { expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate.ts'
import { callOf, type Fact } from '../../../src/evaluate/facts.ts'
import {
  REFERRED,
  recheckInDays,
  subjectOf,
  toldOfCall
} from '../../../src/places/desk/what-to-record.ts'
import { rawCall } from '../../helpers/random-call.ts'
import { loadShipped } from '../../helpers/shipped.ts'

const { trees } = await loadShipped()

test.each(trees.slice(0, 4).map(tree => [tree.id, tree] as const))(
  '%s: whatever was told of people, a record is the same, or says referred and nothing else',
  (_, tree) => {
    const evaluated = (facts: readonly Fact[]) => {
      const { answers, either } = callOf(tree, facts)
      return evaluate(tree, answers, either)
    }
    const aboutJar = ({ observation }: Fact) => tree.observations[observation]?.about !== 'person'
    let referred = 0
    let decided = 0
    fc.assert(
      fc.property(rawCall(tree), facts => {
        const whole = evaluated(facts)
        const told = toldOfCall(whole)
        if (whole.possible.atLeast.person !== null) {
          referred += 1
          expect(told).toEqual(REFERRED)
          return
        }
        const jarAlone = evaluated(facts.filter(aboutJar))
        expect(told).toEqual(toldOfCall(jarAlone))
        expect(recheckInDays(whole)).toBe(recheckInDays(jarAlone))
        if (!told.referred && told.batch !== null) decided += 1
      }),
      { numRuns: 120 }
    )
    expect(referred).toBeGreaterThan(0)
    expect(decided).toBeGreaterThan(0)
  }
)

test('a tree is named by its id, edition and the first digits of its fingerprint', () => {
  for (const tree of trees) {
    expect(subjectOf(tree)).toMatchObject({ tree: tree.id, edition: tree.edition })
    expect(subjectOf(tree).fingerprint).toMatch(/^[0-9a-f]{12}$/)
  }
})
