import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { callOf, type Fact } from '../../src/evaluate/facts.ts'
import { walk } from '../../src/evaluate/walk.ts'
import { level, useLevel } from '../../src/tree/caution.ts'
import { TRACKS } from '../../src/tree/observation.ts'
import { measured } from '../../src/tree/reading.ts'
import { shippedTrees } from '../helpers/shipped.ts'
import { usualExcept } from '../helpers/usual.ts'

const [tree] = await shippedTrees()
if (tree === undefined) throw new Error('no tree is shipped')

const fact = (observation: string, answer: Fact['answer']): Fact => ({ observation, answer })
const reading = (observation: string, value: number, instrument?: string): Fact => {
  const measure = tree.observations[observation]
  if (measure?.kind !== 'measure') throw new Error(`${observation} is no measure`)
  return fact(observation, measured(measure, value, instrument))
}

/** Facts as a call may hold them, contradictions and all. */
const anyFact: fc.Arbitrary<Fact> = fc
  .constantFrom(...Object.values(tree.observations))
  .chain((observation): fc.Arbitrary<Fact> => {
    switch (observation.kind) {
      case 'choice':
        return fc
          .constantFrom('unsure', ...observation.answers.map(({ id }) => id))
          .map(answer => fact(observation.id, answer))
      case 'signs':
        return fc
          .tuple(
            fc.constantFrom(...observation.signs.map(({ id }) => id)),
            fc.constantFrom('yes', 'no', 'unsure')
          )
          .map(([sign, value]) => fact(observation.id, { [sign]: value } as Fact['answer']))
      case 'measure':
        return fc
          .integer({ min: observation.span.from, max: Math.min(observation.span.to, 40) })
          .map(value => reading(observation.id, value))
    }
  })

describe('the facts of a call', () => {
  test('come to the same answers in whatever order they were told', () => {
    fc.assert(
      fc.property(fc.array(anyFact, { maxLength: 12 }), fc.nat(), (facts, turn) => {
        const turned = facts.map((_, at) => facts[(at + turn) % facts.length] as Fact).reverse()
        expect(callOf(tree, turned).answers).toEqual(callOf(tree, facts).answers)
      }),
      { numRuns: 60 }
    )
  })

  test('contradict each other only where two different things were told', () => {
    const agreeing = [fact('surface-texture', 'wet-film'), fact('surface-texture', 'wet-film')]
    expect(
      callOf(tree, [...agreeing, reading('day', 9), reading('day', 9)]).contradictions
    ).toEqual([])
  })
})

describe('of two things told the more cautious counts', () => {
  test('of two textures, dry fuzz', () => {
    const { answers, contradictions } = callOf(tree, [
      fact('surface-texture', 'dry-fuzzy'),
      fact('surface-texture', 'wet-film')
    ])
    expect(answers['surface-texture']).toBe('dry-fuzzy')
    expect(contradictions).toEqual([
      {
        observation: 'surface-texture',
        sign: null,
        told: ['dry-fuzzy', 'wet-film']
      }
    ])
  })

  test('of a sign ruled out and seen, the sign seen', () => {
    const { answers, contradictions } = callOf(tree, [
      fact('jar-signs', { 'insects-inside': 'no', 'cleaner-got-in': 'no' }),
      fact('jar-signs', { 'insects-inside': 'yes' })
    ])
    expect(contradictions).toEqual([
      { observation: 'jar-signs', sign: 'insects-inside', told: ['no', 'yes'] }
    ])
    expect(answers['jar-signs']).toMatchObject({ 'insects-inside': 'yes' })
  })

  test('of a reading and "not sure", whichever leaves less', () => {
    const told = (...facts: Fact[]) => callOf(tree, [...known('jar-ph'), ...facts])
    const unsure = fact('jar-ph', 'unsure')
    const sour = reading('jar-ph', 3.2, 'meter')
    const useOf = (...facts: Fact[]) => walk(tree, told(...facts).answers).outcome.use
    expect(useOf(sour)).toBe('as-directed')
    expect(useOf(sour, unsure)).toBe(useOf(unsure))
    expect(told(unsure, sour).answers['jar-ph']).toBe('unsure')
  })

  test('of two readings, never the one that would let somebody drink', () => {
    const useOf = (...facts: Fact[]) =>
      walk(tree, callOf(tree, [...known('jar-ph'), ...facts]).answers).outcome.use
    const sour = reading('jar-ph', 3.2, 'meter')
    // The passing reading alone frees the jar: without that the rest would show nothing.
    expect(useOf(sour)).toBe('as-directed')
    expect(useOf(sour, reading('jar-ph', 4.6, 'meter'))).not.toBe('as-directed')
  })

  test('of any two readings neither alone would lead to a graver verdict', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('jar-ph', 'day'),
        fc.integer({ min: 20, max: 140 }),
        fc.integer({ min: 20, max: 140 }),
        (id, a, b) => {
          const outcomeOf = (...tenths: number[]) => {
            const readings = tenths.map(each =>
              reading(id, id === 'day' ? Math.floor(each / 4) : each / 20)
            )
            return walk(tree, callOf(tree, [...known(id), ...readings]).answers).outcome
          }
          const both = outcomeOf(a, b)
          const caution = (outcome: typeof both) => [
            ...TRACKS.map(track => level(tree, track, outcome[track])),
            useLevel(outcome.use)
          ]
          for (const alone of [outcomeOf(a), outcomeOf(b)]) {
            expect(firstDifference(caution(both), caution(alone))).toBeGreaterThanOrEqual(0)
          }
        }
      ),
      { numRuns: 100 }
    )
  })
})

/** How much more cautious one side is where the two first differ: people before the jar, verdicts before use. */
function firstDifference(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((one, index) => one !== b[index])
  return at < 0 ? 0 : (a[at] ?? 0) - (b[at] ?? 0)
}

/** Answers as facts, all but what the test tells itself. */
const known = (except: string): readonly Fact[] =>
  Object.entries(usualExcept(tree, {}))
    .filter(([id]) => id !== except)
    .map(([observation, answer]) => ({ observation, answer }))
