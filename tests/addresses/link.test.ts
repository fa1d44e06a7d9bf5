import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readLink, writeLink } from '../../src/addresses/link.ts'
import { readRoute } from '../../src/addresses/route.ts'
import type { Answer, Answers } from '../../src/tree/answers.ts'
import type { Observation } from '../../src/tree/observation.ts'
import { measured } from '../../src/tree/reading.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'

const trees = (await shippedTrees()).map(tree => [tree.id, tree] as const)

/** Any answer that a form can give: a screen of signs told whole, or in part as a caller tells it. */
function answerTo(observation: Observation): fc.Arbitrary<Answer> {
  switch (observation.kind) {
    case 'choice':
      return fc.constantFrom('unsure', ...observation.answers.map(({ id }) => id))
    case 'signs': {
      const asked = observation.signs.filter(({ volunteered }) => !volunteered)
      const heard = observation.signs.filter(({ volunteered }) => volunteered)
      const told = Object.fromEntries(
        asked.map(({ id }) => [id, fc.constantFrom('yes', 'no', 'unsure')])
      )
      const marked = Object.fromEntries(
        heard.map(({ id }) => [id, fc.constantFrom('yes', 'unsure')])
      )
      return fc
        .tuple(
          fc.oneof(fc.record(told), fc.record(told, { requiredKeys: [] })),
          fc.record(marked, { requiredKeys: [] })
        )
        .map(([all, some]) => ({ ...all, ...some }) as Answer)
    }
    case 'measure': {
      const { span, unit, instruments } = observation
      const parts = unit === 'day' ? 1 : 100
      const reading = fc
        .integer({ min: Math.ceil(span.from * parts), max: Math.floor(span.to * parts) })
        .map(whole => whole / parts)
      const instrument = fc.constantFrom(undefined, ...instruments.map(({ id }) => id))
      return fc.oneof(
        fc.constant('unsure'),
        fc.tuple(reading, instrument).map(([value, by]) => measured(observation, value, by))
      )
    }
  }
}

/** Some of a tree's observations, answered anyhow: a person's among them when `people` says so. */
const answersTo = (tree: Tree, people: boolean) =>
  fc.record<Record<string, Answer>>(
    Object.fromEntries(
      Object.values(tree.observations)
        .filter(({ about }) => people || about !== 'person')
        .map(observation => [observation.id, answerTo(observation)])
    ),
    { requiredKeys: [] }
  ) as fc.Arbitrary<Answers>

const queryOf = (link: string) => link.slice(link.indexOf('?') + 1)
const unfingered = (query: string) => query.replace(/^f=[^&]*&?/, '')

describe.each(trees)('a link to %s', (_, tree) => {
  test('brings back every answer about the jar, as it was told', () => {
    fc.assert(
      fc.property(answersTo(tree, false), answers => {
        const { tree: id, query } = readRoute(`#/${writeLink(tree, answers)}`, ['en', 'es'])

        expect(id).toBe(tree.id)
        expect(readLink(tree, query ?? '')).toEqual({ answers, standing: 'whole' })
      })
    )
  })

  test('is the same whatever was told of people', () => {
    fc.assert(
      fc.property(answersTo(tree, true), answers => {
        const jar = Object.fromEntries(
          Object.entries(answers).filter(([id]) => tree.observations[id]?.about !== 'person')
        )
        expect(writeLink(tree, answers)).toBe(writeLink(tree, jar))
      })
    )
  })

  test('takes no answer about a person, however it is written', () => {
    fc.assert(
      fc.property(fc.string(), text => {
        for (const { id, about } of Object.values(tree.observations)) {
          if (about !== 'person') continue
          const { answers } = readLink(tree, `${id}=none&${encodeURI(id)}=${text}&end`)
          expect(Object.keys(answers)).not.toContain(id)
        }
      })
    )
  })

  test('made with another fingerprint is said to be', () => {
    fc.assert(
      fc.property(answersTo(tree, false), fc.string(), (answers, print) => {
        const query = `f=${encodeURIComponent(print)}&${unfingered(queryOf(writeLink(tree, answers)))}`
        expect(readLink(tree, query).standing).toBe('other-edition')
      })
    )
  })

  test('that is garbage never throws and never claims to be whole', () => {
    const piece = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.constantFrom('__proto__', 'constructor', '=', '&', '~', '.', '@', '%', '%E0', 'none', 'f'),
      fc.constantFrom(...Object.keys(tree.observations))
    )
    const garbage = fc.array(piece, { maxLength: 30 }).map(pieces => pieces.join(''))
    fc.assert(
      fc.property(garbage, query => {
        const { answers, standing } = readLink(tree, query)
        expect(standing).not.toBe('whole')
        expect(Object.keys(answers).filter(id => !Object.hasOwn(tree.observations, id))).toEqual([])
      }),
      { numRuns: 1000 }
    )
  })

  test('cut short anywhere keeps only answers that were told', () => {
    fc.assert(
      fc.property(answersTo(tree, false), fc.nat(), (answers, cut) => {
        const query = queryOf(writeLink(tree, answers))
        const { answers: kept, standing } = readLink(tree, query.slice(0, cut % query.length))

        expect(standing).not.toBe('whole')
        for (const [id, answer] of Object.entries(kept)) expect(answer).toEqual(answers[id])
      })
    )
  })
})
