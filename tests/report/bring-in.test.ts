import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import shipped from '../../public/office.json' with { type: 'json' }
import { evaluate } from '../../src/evaluate/evaluate.ts'
import { callOf } from '../../src/evaluate/facts.ts'
import { readOfficePack } from '../../src/office/read-office.ts'
import { reportOn } from '../../src/report/report.ts'
import type { Answers } from '../../src/tree/answers.ts'
import { verdict } from '../../src/tree/caution.ts'
import { measured } from '../../src/tree/reading.ts'
import { hoursText } from '../../src/words/hours-text.ts'
import { rawFact } from '../helpers/random-call.ts'
import { shippedTrees } from '../helpers/shipped.ts'
import { usualExcept } from '../helpers/usual.ts'

const today = new Date('2026-11-25T12:00:00Z')
const pack = readOfficePack(shipped)
const trees = await shippedTrees()
const [jar] = trees
expect.assert(jar !== undefined && pack !== null)

const of = (told: Answers, office = pack, day = today) =>
  reportOn(evaluate(jar, usualExcept(jar, told)), office, day).bringIn
const untested = { 'jar-ph': 'unsure', day: { low: 9, reading: 9, high: 9 } } as const

describe('what the office measures can be brought in', () => {
  test('where the acidity is all that is open, with where and when', () => {
    expect(of(untested)).toEqual({
      name: 'Larkspur County Outreach Office',
      phone: '555-0110',
      hours: pack.hours
    })
  })

  const strip = measured(jar.observations['jar-ph'] as never, 4.1, 'narrow-strip')
  test('where a strip was in doubt', () => {
    expect(of({ ...untested, 'jar-ph': strip })).not.toBeNull()
  })

  test.each<[string, Answers]>([
    ['nothing is left to measure', { 'jar-ph': { low: 3.1, reading: 3.1, high: 3.1 } }],
    ['the batch goes', { ...untested, 'surface-texture': 'dry-fuzzy' }],
    ['somebody is ill', { ...untested, 'people-signs': { 'mild-upset': 'yes' } }],
    ['it may burst', { ...untested, 'container-signs': { 'lid-bulging-or-hissing': 'yes' } }]
  ])('but not where %s', (_, told) => {
    expect(of(told)).toBeNull()
  })

  test('only by an office that says so, with a number that can be relied on', () => {
    expect(of(untested, { ...pack, measures: [] })).toBeNull()
    expect(of(untested, pack, new Date('2029-01-01T12:00:00Z'))).toBeNull()
    expect(of(untested, { ...pack, hours: null })).toMatchObject({ hours: null })
  })

  test.each(trees.map(tree => [tree.id, tree] as const))(
    'and whatever is told of %s, never one that is thrown out, may burst, or made somebody ill',
    (_, tree) => {
      const observations = Object.values(tree.observations)
      const untold = observations.filter(each => each.kind === 'measure' && each.unit === 'ph')
      const odd = fc.array(fc.constantFrom(...observations).chain(rawFact), { maxLength: 4 })
      fc.assert(
        fc.property(odd, facts => {
          const unsure = untold.map(({ id }) => ({ observation: id, answer: 'unsure' as const }))
          const { answers, either } = callOf(tree, [...unsure, ...facts])
          const { bringIn, outcome } = reportOn(
            evaluate(tree, usualExcept(tree, answers), either),
            pack,
            today
          )
          if (bringIn === null) return
          expect(outcome).toMatchObject({ person: null, container: null, use: 'not-yet' })
          expect(verdict(tree, outcome.batch ?? '').ceiling).not.toBe('never')
        }),
        { numRuns: 200 }
      )
    }
  )
})

describe('the pack', () => {
  test('measures what is known here, and nothing where it does not say', () => {
    expect(readOfficePack({ ...shipped, measures: ['ph', 'salt'] })?.measures).toEqual(['ph'])
    expect(readOfficePack({ ...shipped, measures: undefined })?.measures).toEqual([])
  })
})

describe('hours in words', () => {
  test('stand day by day, as each language writes them', () => {
    expect.assert(pack.hours !== null)
    expect(hoursText(pack.hours, 'en').replace(/[\u2009\u202f]/g, ' ')).toBe(
      'Mon–Thu 8:00 AM – 4:30 PM; Fri 8:00 AM – 12:00 PM'
    )
    expect(hoursText(pack.hours, 'ar')).toMatch(/8:00.*4:30/)
    expect(hoursText(pack.hours, 'es')).toMatch(/^lun–jue/)
  })
})
