import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Fact, factKey } from '../../../src/words/facts/fact.ts'
import { wordsOf } from '../../../src/words/facts/normal.ts'
import { answerLabel } from '../../../src/words/tree-texts.ts'
import { offered, shippedReader, sureOf, toldBy } from './shipped-reader.ts'

const { tree, words, said, reader } = await shippedReader()
const phrases = said.filter(({ answer }) => answer !== null)

/** Every text by which an answer is known, and whether it is a label only. */
const known = [
  ...phrases.map(each => ({ ...toldBy(tree, each), text: each.phrase, label: false })),
  ...Object.values(tree.observations).flatMap(observation => {
    const ids = observation.kind === 'choice' ? observation.answers : []
    const signs = observation.kind === 'signs' ? observation.signs : []
    return [...ids, ...signs].flatMap(({ id }) => {
      const fact = toldBy(tree, { phrase: id, observation: observation.id, answer: id })
      const labels = words.map(each => answerLabel(each, observation.id, id))
      return [
        { ...fact, text: id.replaceAll('-', ' '), label: false },
        ...labels.map(text => ({ ...fact, text, label: true }))
      ]
    })
  })
].map(each => ({ ...each, words: wordsOf(each.text) }))

const rank = ({ observation: id, answer }: Fact): number => {
  const observation = tree.observations[id]
  return observation?.kind === 'choice'
    ? observation.answers.findIndex(each => each.id === answer)
    : Number.NaN
}

const everyWord = new Set(known.flatMap(each => each.words))

/** Another answer has the same words, or one more worrying of the same choice has them and more. */
function isShared(fact: Fact, phrase: string): boolean {
  const own = wordsOf(phrase)
  return known.some(other => {
    if (factKey(other) === factKey(fact)) return false
    if (other.words.join(' ') === own.join(' ')) return true
    return (
      !other.label &&
      other.observation === fact.observation &&
      rank(other) < rank(fact) &&
      own.every(word => other.words.includes(word))
    )
  })
}

describe('whatever callers are known to say is understood', () => {
  test('a said phrase alone lists its own answer', () => {
    const lost = phrases.filter(each => {
      const keys = offered(reader, each.phrase).map(factKey)
      return !keys.includes(factKey(toldBy(tree, each)))
    })
    expect(lost).toEqual([])
    expect(phrases.length).toBeGreaterThan(200)
  })

  test('it is sure exactly when no other answer shares it', () => {
    const wrong = phrases.filter(each => {
      const fact = toldBy(tree, each)
      const sure = sureOf(reader, each.phrase).map(factKey)
      return isShared(fact, each.phrase) ? sure.length > 0 : sure.join() !== factKey(fact)
    })
    expect(wrong).toEqual([])
  })

  test('case, accents, apostrophes and plurals change nothing', () => {
    for (const line of ['HAIRY', 'Hairy', '  hairy  ', 'it’s hairy', 'it is hairy']) {
      expect(sureOf(reader, line)).toEqual([
        { observation: 'surface-texture', answer: 'dry-fuzzy' }
      ])
    }
    expect(sureOf(reader, 'maggot')).toEqual(sureOf(reader, 'maggots'))
    expect(sureOf(reader, 'I can’t breathe')).toEqual(sureOf(reader, 'cannot breathe'))
  })
})

describe('a slip of the finger still finds the answer', () => {
  const slips = phrases.flatMap(each =>
    [...each.phrase.matchAll(/\p{L}{6,}/gu)].map(({ 0: word, index }) => ({ ...each, word, index }))
  )
  const slip = fc.record({
    at: fc.constantFrom(...slips),
    place: fc.nat({ max: 100 }),
    how: fc.constantFrom('swap', 'drop', 'double')
  })

  test('one typing error in a long word lists the right answer', () => {
    fc.assert(
      fc.property(slip, ({ at, place, how }) => {
        const letters = [...at.word]
        const i = place % (letters.length - 1)
        if (how === 'swap') letters.splice(i, 2, letters[i + 1] ?? '', letters[i] ?? '')
        else if (how === 'drop') letters.splice(i, 1)
        else letters.splice(i, 0, letters[i] ?? '')
        // "Ridge" for "fridge" is no slip that anybody could see: it is another of the words.
        fc.pre(!everyWord.has(letters.join('')))
        const line =
          at.phrase.slice(0, at.index) +
          letters.join('') +
          at.phrase.slice(at.index + at.word.length)
        expect(offered(reader, line).map(factKey), line).toContain(factKey(toldBy(tree, at)))
      }),
      { numRuns: 1500, seed: 42 }
    )
  })

  test('it is taken only when one word is one letter off', () => {
    expect(sureOf(reader, 'hisssing')).toEqual(sureOf(reader, 'hissing'))
    // Another first letter is another word.
    expect(sureOf(reader, 'missing')).toEqual([])
    expect(sureOf(reader, 'hary')).toEqual([])
    expect(sureOf(reader, 'no magots')).toEqual([])
    // A longer phrase may be meant.
    expect(offered(reader, 'ortten eggs')[0]?.answer).toEqual({ 'insects-inside': 'yes' })
    expect(sureOf(reader, 'ortten eggs')).toEqual([])
  })
})
