import { describe, expect, test } from 'vitest'
import { factKey } from '../../src/reader/fact.ts'
import { isDanger } from '../../src/reader/worry.ts'
import { isInterval } from '../../src/tree/answers.ts'
import { offered, shippedReader, sureOf, toldBy } from './shipped-reader.ts'

const { tree, said, reader } = shippedReader('kombucha-jar', {
  es: [
    { phrase: 'moho', observation: 'surface-texture', answer: 'dry-fuzzy', force: 'told' },
    { phrase: 'pelusa', observation: 'surface-texture', answer: 'dry-fuzzy', force: 'told' }
  ],
  // A language whose small words nobody has listed.
  xx: [{ phrase: 'zzyzx', observation: 'surface-texture', answer: 'wet-film', force: 'told' }]
})
const only = (line: string) => reader.read(line)[0]

describe('what is ruled out is never taken as seen', () => {
  test.each([
    'no fuzz',
    'not hairy',
    'isn’t hairy',
    'without mold',
    'no sign of mold',
    'don’t see any fuzz',
    'never saw mold',
    'no fuzz or mold',
    'no hairs, fuzz, or mold',
    'no fuzz and mold',
    'nothing fuzzy',
    'mold, no',
    'mold: none',
    'sin moho',
    'no hay pelusa',
    'no se ve moho',
    'ni moho ni pelusa'
  ])('%j leaves the other answers of the choice open', line => {
    expect(sureOf(reader, line)).toEqual([])
    expect(only(line)?.problem).toBe('said-not-seen')
  })

  test('a denied danger phrase is never sure to be there', () => {
    const danger = said.filter(
      ({ observation, answer, phrase }) =>
        answer !== null &&
        isDanger(tree.observations[observation] ?? never(), answer) &&
        // Before these words a "no" refuses what was said and goes on: "no it hisses".
        !/^(?:it|not|the|he|she) /.test(phrase)
    )
    expect(danger.length).toBeGreaterThan(50)
    const denials: Readonly<Record<string, readonly string[]>> = {
      en: ['no ', 'not ', 'no sign of ', 'there isn’t any ', 'without ', 'never '],
      es: ['no hay ', 'sin ', 'no tiene ', 'nunca ']
    }
    const taken = danger.flatMap(each =>
      (denials[each.tag] ?? []).filter(denial =>
        sureOf(reader, denial + each.phrase)
          .map(factKey)
          .includes(factKey(toldBy(tree, each)))
      )
    )
    expect(taken).toEqual([])
  })

  test('a danger sign is ruled out by hand: one of its phrases is not all of it', () => {
    for (const line of ['no maggots', 'no kids']) {
      const [first] = offered(reader, line)
      expect(Object.values(first?.answer ?? {}), line).toEqual(['no'])
      expect(sureOf(reader, line), line).toEqual([])
    }
  })

  test('another sign is ruled out as it is said', () => {
    const boozy = { observation: 'smell-and-liquid', answer: { boozy: 'no' } }
    expect(sureOf(reader, 'not boozy')).toEqual([boozy])
    expect(sureOf(reader, 'doesn’t smell boozy')).toEqual([boozy])
  })

  test.each(['not boozy without reason', 'tight lid isn’t', 'not very boozy'])(
    '%j may be meant either way',
    line => {
      expect(sureOf(reader, line)).toEqual([])
    }
  )

  test('the part of a sign’s words that is denied is offered as absent', () => {
    expect(only('isn’t bulging')).toMatchObject({
      candidates: [{ answer: { 'lid-bulging-or-hissing': 'no' }, sure: false }],
      problem: 'said-not-seen'
    })
  })

  test('a phrase that holds a no is itself what is said', () => {
    for (const line of ['no film', 'nothing yet', 'no film yet']) {
      expect(sureOf(reader, line)).toEqual([
        { observation: 'surface-texture', answer: 'nothing-yet' }
      ])
    }
    expect(sureOf(reader, 'I cannot breathe')).toEqual([
      { observation: 'people-signs', answer: { 'severe-symptoms': 'yes' } }
    ])
  })

  test('words of a language without known small words are only offered', () => {
    expect(only('zzyzx')?.candidates).toMatchObject([{ answer: 'wet-film', sure: false }])
  })
})

describe('whoever does not know is told to be unsure', () => {
  test.each([
    ['maybe hairy', 'surface-texture', 'unsure'],
    ['not sure if it’s hairy', 'surface-texture', 'unsure'],
    ['not sure about the surface', 'surface-texture', 'unsure'],
    ['can’t tell the color', 'spots-and-color', 'unsure'],
    ['don’t know the ph', 'jar-ph', 'unsure'],
    ['didn’t measure the ph', 'jar-ph', 'unsure'],
    ['no idea what day', 'day', 'unsure'],
    ['no sé el ph', 'jar-ph', 'unsure'],
    ['no se el pH', 'jar-ph', 'unsure'],
    ['tal vez moho', 'surface-texture', 'unsure'],
    ['maybe maggots', 'jar-signs', { 'insects-inside': 'unsure' }]
  ])('%j', (line, observation, answer) => {
    expect(sureOf(reader, line)).toEqual([{ observation, answer }])
  })

  test('a screen that is doubted as a whole has each asked sign unsure', () => {
    const screen = tree.observations['smell-and-liquid']
    if (screen?.kind !== 'signs') throw new Error('the smell is a screen of signs')
    const asked = screen.signs.filter(({ volunteered }) => !volunteered)
    expect(sureOf(reader, 'not sure about the smell')).toEqual([
      {
        observation: 'smell-and-liquid',
        answer: Object.fromEntries(asked.map(({ id }) => [id, 'unsure']))
      }
    ])
  })

  test('a doubt about two things is only offered', () => {
    const listed = offered(reader, 'not sure about the lid')
    expect(listed.length).toBeGreaterThan(1)
    expect(listed.some(({ sure }) => sure)).toBe(false)
  })

  test('a doubted number is offered beside not knowing', () => {
    const listed = offered(reader, 'not sure, ph maybe 4.1')
    expect(listed.some(({ answer }) => answer === 'unsure')).toBe(true)
    expect(listed.some(({ answer }) => isInterval(answer))).toBe(true)
    expect(listed.some(({ sure }) => sure)).toBe(false)
  })
})

function never(): never {
  throw new Error('the tree knows every said observation')
}
