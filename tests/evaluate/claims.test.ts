import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { claimsOf, type Ruled } from '../../src/evaluate/claims.ts'
import { evaluate } from '../../src/evaluate/evaluate.ts'
import { walk } from '../../src/evaluate/walk.ts'
import { type Answers, type SignValue, signsOf } from '../../src/tree/answers.ts'
import type { Observation, SignsObservation } from '../../src/tree/observation.ts'
import { measured } from '../../src/tree/reading.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'
import { usualExcept } from '../helpers/usual.ts'

const trees = await shippedTrees()
const names = trees.map(tree => [tree.id, tree] as const)
const screensOf = (tree: Tree, about: Ruled) =>
  Object.values(tree.observations).filter(
    (one): one is SignsObservation => one.kind === 'signs' && one.about === about
  )
const claims = (tree: Tree, answers: Answers) => claimsOf(evaluate(tree, answers))

/** An answer as somebody gives it, mostly no, of a screen perhaps only a part. */
function raw(observation: Observation): fc.Arbitrary<Answers> {
  const { id } = observation
  switch (observation.kind) {
    case 'choice':
      return fc
        .constantFrom(...observation.answers.map(answer => answer.id), 'unsure')
        .map(answer => ({ [id]: answer }))
    case 'signs':
      return fc
        .tuple(
          ...observation.signs.map(sign =>
            fc.tuple(
              fc.constant(sign.id),
              fc.oneof(
                { weight: 40, arbitrary: fc.constant<SignValue | null>('no') },
                { weight: 1, arbitrary: fc.constantFrom<SignValue | null>('yes', 'unsure', null) }
              )
            )
          )
        )
        .map(all => all.filter((one): one is [string, SignValue] => one[1] !== null))
        .map(told => (told.length === 0 ? {} : { [id]: Object.fromEntries(told) }))
    case 'measure': {
      const { from, to } = observation.span
      const value = fc.integer({ min: Math.ceil(from), max: Math.min(Math.floor(to), 60) })
      const instrument = fc.constantFrom(undefined, ...observation.instruments.map(one => one.id))
      return fc.oneof(
        fc.constant({ [id]: 'unsure' }),
        fc.tuple(value, instrument).map(([n, by]) => ({ [id]: measured(observation, n, by) }))
      )
    }
  }
}

/** Some of a call: whatever was told of some observations. */
const partOfCall = (tree: Tree): fc.Arbitrary<Answers> =>
  fc
    .subarray(Object.values(tree.observations))
    .chain(some => fc.tuple(...some.map(raw)))
    .map(parts => Object.assign({}, ...parts))

describe.each(names)('what the desk says of the answers, in %s', (_, tree) => {
  test('nothing is ruled out unless every sign of its screens was told as no', () => {
    let made = 0
    fc.assert(
      fc.property(partOfCall(tree), answers => {
        const { ruledOut } = claims(tree, answers)
        made += ruledOut.length
        for (const track of ruledOut) {
          const told = screensOf(tree, track).filter(({ id }) => Object.hasOwn(answers, id))
          expect(told.length).toBeGreaterThan(0)
          for (const { id, signs } of told) {
            const values = signs
              .filter(sign => !sign.volunteered || Object.hasOwn(signsOf(answers, id), sign.id))
              .map(sign => signsOf(answers, id)[sign.id])
            expect(new Set(values)).toEqual(new Set(['no']))
          }
          for (const { id, about } of Object.values(tree.observations)) {
            if (about === track) expect(answers[id]).not.toBe('unsure')
          }
        }
      }),
      { numRuns: 500 }
    )
    expect(made).toBeGreaterThan(20)
  })

  test('a track that is ruled out stays without a verdict, whatever else is told', () => {
    const call = fc.tuple(partOfCall(tree), partOfCall(tree))
    fc.assert(
      fc.property(call, ([first, second]) => {
        const { ruledOut } = claims(tree, first)
        const more = Object.fromEntries(
          Object.entries(second).filter(([id]) => tree.observations[id]?.about === 'batch')
        )
        const { outcome } = walk(tree, { ...usualExcept(tree, {}), ...more, ...first })
        for (const track of ruledOut) expect(outcome[track]).toBeNull()
      }),
      { numRuns: 300 }
    )
  })

  test('what is not asked yet has a sign untold, and is not ruled out', () => {
    fc.assert(
      fc.property(partOfCall(tree), answers => {
        const { ruledOut, notAsked } = claims(tree, answers)
        for (const id of notAsked) {
          const screen = tree.observations[id] as SignsObservation
          expect(screen.signs.some(sign => !Object.hasOwn(signsOf(answers, id), sign.id))).toBe(
            true
          )
          expect(ruledOut).not.toContain(screen.about)
        }
      }),
      { numRuns: 300 }
    )
  })

  test('at the start nothing is ruled out and people are not asked yet', () => {
    expect(claims(tree, {}).ruledOut).toEqual([])
    expect(claims(tree, {}).notAsked).toEqual(expect.arrayContaining(['people-signs', 'drinkers']))
  })

  test('someone who will have some keeps the people from being ruled out', () => {
    const usual = usualExcept(tree, {})
    for (const screen of ['people-signs', 'drinkers']) {
      for (const sign of Object.keys(usual[screen] as Record<string, SignValue>)) {
        for (const value of ['yes', 'unsure'] as const) {
          const told = { ...usual, [screen]: { ...(usual[screen] as object), [sign]: value } }
          expect(claims(tree, told).ruledOut, `${sign} ${value}`).not.toContain('person')
        }
      }
    }
  })

  test('where all is told as no, it is said', () => {
    const usual = usualExcept(tree, {})
    const told = Object.fromEntries(
      Object.entries(usual).filter(([id]) => tree.observations[id]?.about !== 'batch')
    )
    const { asks } = walk(tree, told)
    expect(asks).not.toBeNull()
    expect(claims(tree, told).ruledOut).toContain('person')
  })
})
