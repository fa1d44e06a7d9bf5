import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { spaceOf } from '../../src/diagrams/space.ts'
import { walk } from '../../src/evaluate/walk.ts'
import { withDerived, workOut } from '../../src/machine/derived/derive.ts'
import { createSession, type Session } from '../../src/machine/session.ts'
import type { Answers } from '../../src/tree/answers.ts'
import { isInterval } from '../../src/tree/answers.ts'
import { inputsOf, onlyInputs } from '../../src/tree/derived.ts'
import type { MeasureObservation } from '../../src/tree/observation.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'
import { usualExcept } from '../helpers/usual.ts'

const shipped = await shippedTrees()
const tree = shipped.find(({ id }) => id === 'kombucha-jar') as Tree
const exact = (x: number) => ({ low: x, reading: x, high: x })
const read = (x: number, off: number) => ({ low: x - off, reading: x, high: x + off })
const CUP = 236.5882365
const GALLON = 16 * CUP
const AMOUNTS: Answers = { 'starter-amount': exact(2 * CUP), 'batch-amount': exact(GALLON) }
const MEASURED: Answers = { ...AMOUNTS, 'starter-ph': read(3, 0.05), 'starter-source': 'unsure' }
const of = (id: string) => tree.observations[id]

describe('what is worked out', () => {
  // Worked example: 2 cups in a gallon are 12.5 %.
  test('comes of the plain quantities that people know', () => {
    expect(withDerived(tree, AMOUNTS)['starter-share']).toMatchObject({ low: 12.5, high: 12.5 })
    const mix = withDerived(tree, MEASURED)['mix-acidity']
    if (!mix || !isInterval(mix)) throw new Error('nothing was worked out')
    expect(mix.reading).toBeCloseTo(3.92, 2)
    expect(mix.high).toBeCloseTo(4.43, 2)
  })

  test('goes when one of its quantities is withdrawn, and comes back with it', () => {
    const session = createSession(tree, MEASURED)
    expect(session.evaluation().answers).toHaveProperty('mix-acidity')
    session.withdraw('batch-amount')
    expect(session.evaluation().answers).not.toHaveProperty('mix-acidity')
    expect(session.evaluation().answers).not.toHaveProperty('starter-share')
    session.observe('batch-amount', exact(GALLON))
    expect(session.evaluation().answers).toHaveProperty('mix-acidity')
  })

  test('gives way to a direct reading', () => {
    const told = { ...MEASURED, 'mix-acidity': read(4.8, 0.05) }
    expect(withDerived(tree, told)['mix-acidity']).toEqual(read(4.8, 0.05))
    expect(createSession(tree, told).evaluation().answers['mix-acidity']).toEqual(read(4.8, 0.05))
  })

  test('is unsure where a quantity is not known, and never a default', () => {
    const unknown: Answers = { ...AMOUNTS, 'starter-ph': 'unsure', 'starter-source': 'unsure' }
    expect(withDerived(tree, unknown)['mix-acidity']).toBe('unsure')
    const noBatch: Answers = { ...MEASURED, 'batch-amount': 'unsure' }
    expect(withDerived(tree, noBatch)['mix-acidity']).toBe('unsure')
    expect(withDerived(tree, noBatch)['starter-share']).toBe('unsure')
  })

  test('is not there while something that it needs was not told yet', () => {
    expect(withDerived(tree, AMOUNTS)).not.toHaveProperty('mix-acidity')
    expect(withDerived(tree, { 'starter-amount': exact(CUP) })).not.toHaveProperty('starter-share')
  })

  test('of more starter than batch counts as unsure and says why', () => {
    const wrong = { 'starter-amount': exact(2 * GALLON), 'batch-amount': exact(GALLON) }
    expect(workOut(of('starter-share'), wrong)).toMatchObject({
      standing: 'bad-input',
      answer: 'unsure'
    })
  })

  test('is the less sure the less is known of the starter', () => {
    const width = (more: Answers) => {
      const found = withDerived(tree, { ...AMOUNTS, ...more })['mix-acidity']
      if (!found || !isInterval(found)) throw new Error('nothing was worked out')
      return found.high - found.low
    }
    const byAge = width({ 'starter-ph': 'unsure', 'starter-source': 'two-weeks-or-more' })
    expect(width(MEASURED)).toBeLessThan(byAge)
    expect(byAge).toBeLessThan(
      width({ 'starter-ph': 'unsure', 'starter-source': 'young-or-chilled' })
    )
  })
})

describe('acid so far', () => {
  const told = (ph: number, day: number, fahrenheit: number): Answers => ({
    'first-ph': read(4.5, 0.05),
    'first-day': exact(0),
    'jar-ph': read(ph, 0.05),
    day: exact(day),
    'room-temperature': read(fahrenheit, 2)
  })
  test('of a slow batch lies above the edge of what is published', () => {
    const found = withDerived(tree, told(4.45, 5, 75))['acid-progress']
    if (!found || !isInterval(found)) throw new Error('nothing was worked out')
    expect(found.low).toBeGreaterThan(0)
  })
  test('of a usual batch lies below it', () => {
    const found = withDerived(tree, told(3.5, 5, 75))['acid-progress']
    if (!found || !isInterval(found)) throw new Error('nothing was worked out')
    expect(found.high).toBeLessThan(0)
  })
  test('in a cold room is unsure: nothing is published', () => {
    expect(workOut(of('acid-progress'), told(4.4, 8, 64))).toMatchObject({
      standing: 'no-published-range',
      answer: 'unsure'
    })
  })
})

describe('plain quantities', () => {
  test('are told beside a tree and are no part of its answer space', () => {
    const inputs = onlyInputs(tree)
    expect([...inputs].sort()).toEqual([
      'batch-amount',
      'first-day',
      'first-ph',
      'starter-amount',
      'starter-ph',
      'starter-source'
    ])
    expect(spaceOf(tree).filter(({ observation }) => inputs.has(observation))).toEqual([])
    expect(inputsOf(of('mix-acidity'))).toEqual([
      'starter-amount',
      'batch-amount',
      'starter-ph',
      'starter-source'
    ])
  })

  test('told in any order come to one outcome', () => {
    const facts = Object.entries({ ...MEASURED, day: exact(0), 'jar-ph': 'unsure' } as Answers)
    const whole = walk(tree, withDerived(tree, Object.fromEntries(facts)))
    fc.assert(
      fc.property(fc.shuffledSubarray(facts, { minLength: facts.length }), order => {
        const session = createSession(tree)
        for (const [id, answer] of order) session.observe(id, answer)
        expect(session.evaluation().walk.outcome).toEqual(whole.outcome)
        expect(askedBy(session)).toEqual(whole.asks?.question ?? null)
      })
    )
  })
})

describe('salt on vegetables', () => {
  const vegetables = shipped.find(({ id }) => id === 'brined-vegetables') as Tree
  const salt = vegetables.observations['salt-share'] as MeasureObservation
  const TABLESPOON = 14.78676478125
  const POUND = 453.59237

  // USDA Complete Guide to Home Canning: 3 tablespoons of canning salt to 5 pounds, about 2.4 %.
  test('by spoons is an interval around the published share', () => {
    const worked = workOut(salt, {
      'salt-grams': 'unsure',
      'salt-spoons': exact(3 * TABLESPOON),
      'salt-kind': 'canning',
      'cabbage-weight': exact(5 * POUND)
    })
    expect(worked?.standing).toBe('worked')
    if (!worked || !isInterval(worked.answer)) throw new Error('nothing was worked out')
    expect(worked.answer.low).toBeLessThan(2.4)
    expect(worked.answer.high).toBeGreaterThan(2.4)
    expect(worked.answer.reading).toBeCloseTo(2.38, 2)
  })

  test('by weight is exact, whatever the spoons', () => {
    const told = {
      'salt-grams': exact(50),
      'salt-spoons': exact(10),
      'salt-kind': 'unsure',
      'cabbage-weight': exact(2500)
    }
    expect(workOut(salt, told)?.answer).toMatchObject({ low: 2, high: 2 })
  })

  test('settles a walk over soft kraut: short of salt it goes, with enough it is asked on', () => {
    const soft = usualExcept(vegetables, {
      'brine-kind': 'sauerkraut',
      'brine-signs': { soft: 'yes' }
    })
    const { 'salt-share': _, ...untold } = soft
    const salted = (spoons: number) =>
      walk(
        vegetables,
        withDerived(vegetables, {
          ...untold,
          'salt-grams': 'unsure',
          'salt-spoons': exact(spoons * TABLESPOON),
          'salt-kind': 'canning',
          'cabbage-weight': exact(5 * POUND)
        })
      ).outcome.batch
    // Oregon State SP 50-745: 1.7 % and less makes soft kraut.
    expect(salted(1)).toBe('discard-and-sanitize')
    expect(salted(3)).toBe('quality-only')
  })

  test('by neither is unsure, and open while one may still be told', () => {
    const neither = {
      'salt-grams': 'unsure',
      'salt-spoons': 'unsure',
      'salt-kind': 'unsure',
      'cabbage-weight': exact(2500)
    }
    expect(workOut(salt, neither)?.answer).toBe('unsure')
    expect(workOut(salt, { 'salt-grams': 'unsure', 'cabbage-weight': exact(2500) })).toBeNull()
    expect(workOut(salt, { 'salt-grams': exact(50) })).toBeNull()
  })
})

/** The question that waits; null once the walk is finished. */
const askedBy = (session: Session): string | null =>
  session.evaluation().walk.asks?.question ?? null
