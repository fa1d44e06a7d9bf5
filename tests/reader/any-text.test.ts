import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { walk } from '../../src/evaluate/walk.ts'
import { type Fact, factKey } from '../../src/reader/fact.ts'
import { type Answers, isInterval, SIGN_VALUES } from '../../src/tree/answers.ts'
import { measured } from '../../src/tree/reading.ts'
import { tell } from '../../src/tree/tell.ts'
import { offered, shippedReader, suggested, sureOf } from './shipped-reader.ts'

const { tree, said, reader } = shippedReader()

/** Whether the tree takes the answer, and an interval is what its instrument gives. */
function isTellable({ observation: id, answer }: Fact): boolean {
  const observation = Object.hasOwn(tree.observations, id) ? tree.observations[id] : undefined
  if (observation === undefined) return false
  if (answer === 'unsure') return observation.kind !== 'signs'
  switch (observation.kind) {
    case 'choice':
      return observation.answers.some(each => each.id === answer)
    case 'signs':
      return (
        typeof answer === 'object' &&
        Object.keys(answer).length > 0 &&
        Object.entries(answer).every(
          ([sign, value]) =>
            observation.signs.some(each => each.id === sign) && SIGN_VALUES.includes(value)
        )
      )
    case 'measure': {
      if (!isInterval(answer)) return false
      const again = measured(observation, answer.reading, answer.instrument)
      return factKey({ observation: id, answer: again }) === factKey({ observation: id, answer })
    }
  }
}

const piece = fc.oneof(
  fc.constantFrom(...said.map(({ phrase }) => phrase)),
  fc.constantFrom(
    'ph 4.1',
    'day 9',
    '75 F',
    '24 C',
    '15%',
    '9',
    'pH 15',
    'no',
    'maybe',
    'not sure'
  ),
  fc.constantFrom('no maggots', 'not boozy', 'maybe hairy', 'don’t know the ph', 'and', 'or', ','),
  fc.constantFrom('__proto__', 'constructor', 'toString', '(a+)+$', '\\', '😀', '½', '°', '-'),
  fc.string({ maxLength: 12, unit: 'grapheme' })
)
const line = fc.array(piece, { maxLength: 12 }).map(parts => parts.join(' '))

describe('any text at all is read', () => {
  test('whatever is read can be told to the tree', () => {
    fc.assert(
      fc.property(fc.oneof(line, fc.string({ unit: 'binary' })), text => {
        const facts = [...offered(reader, text), ...suggested(reader, text)]
        expect(facts.filter(fact => !isTellable(fact))).toEqual([])
        let answers: Answers = {}
        for (const fact of facts) {
          const observation = tree.observations[fact.observation]
          if (observation) answers = tell(answers, observation, fact.answer)
        }
        expect(() => walk(tree, answers)).not.toThrow()
      }),
      { numRuns: 400 }
    )
  })

  test('a part has candidates or says why it has none', () => {
    fc.assert(
      fc.property(line, text => {
        for (const part of reader.read(text)) {
          expect(text).toContain(part.text)
          expect(part.candidates.length > 0 || part.problem !== undefined).toBe(true)
          expect(part.span !== undefined).toBe(part.problem === 'out-of-span')
          const keys = part.candidates.map(factKey)
          expect(new Set(keys).size).toBe(keys.length)
        }
      }),
      { numRuns: 300 }
    )
  })

  test.each([
    ['one endless word', 'a'.repeat(10_000)],
    ['one endless sentence', 'hairy bubbels x '.repeat(700)],
    ['thousands of parts', 'x,'.repeat(5_000)],
    ['nothing but no', 'no '.repeat(3_000)],
    ['nothing but numbers', '9 '.repeat(5_000)],
    ['nothing but joints', 'no fuzz and '.repeat(800)],
    ['only signs', '((((.*'.repeat(1_600)]
  ])('%s comes back', (_, text) => {
    expect(reader.read(text).every(({ text: part }) => text.includes(part))).toBe(true)
    expect(suggested(reader, text).length).toBeLessThanOrEqual(8)
  })
})

describe('the order of facts changes none of them', () => {
  const parts = fc.uniqueArray(
    fc.constantFrom(
      ...said.map(({ phrase }) => phrase).filter(phrase => !/^(?:or|o|ni|nor)\b|,/.test(phrase)),
      ...['ph 4.1', 'day 9', '75 F', 'no maggots', 'not boozy', 'maybe hairy', 'pink', 'asdf']
    ),
    { minLength: 2, maxLength: 15 }
  )

  test('the same parts in any order give the same facts', () => {
    const mixed = parts.chain(some =>
      fc.tuple(
        fc.constant(some),
        fc.shuffledSubarray(some, { minLength: some.length, maxLength: some.length })
      )
    )
    fc.assert(
      // Not a comma: what it joins is read together, as in "the lid, airtight, popped".
      fc.property(mixed, fc.constantFrom('. ', '; ', '\n'), ([one, other], mark) => {
        const keys = (some: readonly string[]) =>
          sureOf(reader, some.join(mark)).map(factKey).sort()
        expect(keys(other)).toEqual(keys(one))
        expect(offered(reader, other.join(mark)).map(factKey).sort()).toEqual(
          offered(reader, one.join(mark)).map(factKey).sort()
        )
      }),
      { numRuns: 200 }
    )
  })

  test('an exception is one wherever it stands, and less sugar is none', () => {
    const told = (text: string) => sureOf(reader, text).map(({ observation }) => observation)
    expect(told('todos estamos bien. menos azúcar')).toEqual(['people-signs', 'tea-and-sugar'])
    expect(told('menos azúcar. todos estamos bien')).toEqual(['tea-and-sugar', 'people-signs'])
    expect(told('todos estamos bien. menos mi abuela')).toEqual([])
    expect(told('todos estamos bien, menos azúcar mi hija')).not.toContain('people-signs')
  })
})
