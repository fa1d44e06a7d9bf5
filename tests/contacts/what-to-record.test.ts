import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  REFERRED,
  recheckInDays,
  subjectOf,
  toldOfCall
} from '../../src/contacts/what-to-record.ts'
import { evaluate } from '../../src/evaluate/evaluate.ts'
import { callOf, type Fact } from '../../src/evaluate/facts.ts'
import { rawCall } from '../helpers/random-call.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { usualExcept } from '../helpers/usual.ts'

const { trees } = await loadShipped()

test.each(trees.slice(0, 4).map(tree => [tree.id, tree] as const))(
  '%s: whatever was told of people, a record is the same, or says referred and nothing else',
  (_, tree) => {
    const evaluated = (facts: readonly Fact[]) => {
      const { answers, either } = callOf(tree, facts)
      return evaluate(tree, answers, either)
    }
    const aboutJar = ({ observation }: Fact) => tree.observations[observation]?.about !== 'person'
    // Few calls drawn at random are complete, or tell of a person in need: some are told whole, some of one.
    const whole = Object.entries(usualExcept(tree, {})).map(
      ([observation, answer]): Fact => ({ observation, answer })
    )
    const ofPeople = Object.values(tree.observations).flatMap(one =>
      one.about === 'person' && one.kind === 'signs'
        ? one.signs.map((sign): Fact => ({ observation: one.id, answer: { [sign.id]: 'yes' } }))
        : []
    )
    const calls = fc.oneof(
      rawCall(tree).map(facts => facts.filter(aboutJar)),
      rawCall(tree).map(facts => [...whole, ...facts].filter(aboutJar)),
      fc.tuple(rawCall(tree), fc.constantFrom(...ofPeople)).map(([facts, one]) => [...facts, one])
    )
    let referred = 0
    let decided = 0
    fc.assert(
      fc.property(calls, facts => {
        const evaluation = evaluated(facts)
        const told = toldOfCall(evaluation)
        if (evaluation.possible.atLeast.person !== null) {
          referred += 1
          expect(told).toEqual(REFERRED)
          return
        }
        const jarAlone = evaluated(facts.filter(aboutJar))
        expect(told).toEqual(toldOfCall(jarAlone))
        expect(recheckInDays(evaluation)).toBe(recheckInDays(jarAlone))
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
