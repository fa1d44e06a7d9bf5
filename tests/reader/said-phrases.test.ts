import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { askedIn } from '../../src/reader/asked.ts'
import { type Fact, factKey } from '../../src/reader/fact.ts'
import { SMALL_WORDS } from '../../src/reader/lexicon.ts'
import { wordsOf } from '../../src/reader/normal.ts'
import type { SaidPhrase } from '../../src/tree/callers-words.ts'
import { answerLabel } from '../../src/words/tree-texts.ts'
import { offered, shippedReader, sureOf, TREES, toldBy, wholeFact } from './shipped-reader.ts'

describe.each(TREES)('in %s whatever callers are known to say is understood', id => {
  const shipped = shippedReader(id)
  const { tree, words, said, reader } = shipped
  const phrases = said.filter(({ answer }) => answer !== null && answer !== 'none')
  const wordsIn = new Map(phrases.map(({ phrase }) => [phrase, wordsOf(phrase).join(' ')]))
  const bare = (phrase: string) => wordsIn.get(phrase) ?? ''

  /** By their words, the answers that phrases and labels are known to mean, doubtful ones too. */
  const meanings = new Map<string, Set<string>>()
  const means = (text: string, fact: Fact) =>
    meanings.set(text, (meanings.get(text) ?? new Set()).add(factKey(fact)))
  const doubtful = new Set<string>()
  for (const each of phrases) {
    means(bare(each.phrase), wholeFact(shipped, each))
    if (each.force === 'may-mean') doubtful.add(bare(each.phrase))
  }
  for (const { phrase, answer } of said)
    if (answer === 'none') doubtful.add(wordsOf(phrase).join(' '))
  for (const observation of Object.values(tree.observations)) {
    const all =
      observation.kind === 'measure'
        ? []
        : observation.kind === 'choice'
          ? observation.answers
          : observation.signs
    for (const { id: answer } of all) {
      const fact = toldBy(tree, { observation: observation.id, answer, force: 'told' })
      for (const of of words)
        means(wordsOf(answerLabel(of, observation.id, answer)).join(' '), fact)
    }
  }
  /** A more worrying answer of the same choice has these words and more: "pink" beside "pink spots". */
  const mayGoOn = ({ observation: of, answer, phrase }: SaidPhrase): boolean => {
    const observation = tree.observations[of]
    if (observation?.kind !== 'choice' || observation.unordered === true) return false
    const rank = (one: string | null) => observation.answers.findIndex(each => each.id === one)
    const own = bare(phrase).split(' ')
    return phrases.some(
      other =>
        other.observation === of &&
        rank(other.answer) < rank(answer) &&
        bare(other.phrase) !== bare(phrase) &&
        own.every(word => bare(other.phrase).split(' ').includes(word))
    )
  }
  const keysOf = (facts: readonly Fact[]) => facts.map(factKey)

  test('a said phrase alone lists its own answer', () => {
    const lost = phrases.filter(
      each => !keysOf(offered(reader, each.phrase)).includes(factKey(wholeFact(shipped, each)))
    )
    expect(lost).toEqual([])
    expect(phrases.length).toBeGreaterThan(100)
  })

  test('it is taken when it can mean nothing else, and what may mean several things never is', () => {
    const wrong = phrases.filter(each => {
      const sure = keysOf(sureOf(reader, each.phrase))
      const own = factKey(wholeFact(shipped, each))
      const text = bare(each.phrase)
      if (each.force === 'may-mean') return sure.includes(own)
      if (doubtful.has(text) || (meanings.get(text)?.size ?? 0) > 1) return false
      return !mayGoOn(each) && sure.join() !== own
    })
    expect(wrong).toEqual([])
  })

  test('nothing but its own answer is ever taken by it, unless the same words say both', () => {
    const also = phrases.filter(each => {
      const known = meanings.get(bare(each.phrase))
      return keysOf(sureOf(reader, each.phrase)).some(key => !known?.has(key))
    })
    expect(also).toEqual([])
  })
})

const { tree, said, reader } = shippedReader()
const phrases = said.filter(({ answer }) => answer !== null && answer !== 'none')
const everyWord = new Set(phrases.flatMap(({ phrase }) => wordsOf(phrase)))

describe('how it is spelled', () => {
  test('case, accents, apostrophes and plurals change nothing', () => {
    for (const line of ['HAIRY', 'Hairy', '  hairy  ', 'it’s hairy', 'it is hairy']) {
      expect(sureOf(reader, line)).toEqual([
        { observation: 'surface-texture', answer: 'dry-fuzzy' }
      ])
    }
    expect(sureOf(reader, 'maggot')).toEqual(sureOf(reader, 'maggots'))
    expect(sureOf(reader, 'I can’t breathe')).toEqual(sureOf(reader, 'cannot breathe'))
  })

  test.each(['hissing', 'it hisses', 'it hissed', 'hissing from the lid'])(
    '%j is one and the same sign, however it is bent',
    line => expect(sureOf(reader, line)).toEqual(sureOf(reader, 'hissing'))
  )
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
        // A "no" that is mistyped is no "no" any more.
        fc.pre(at.force !== 'rules-out' && !wordsOf(at.word).some(word => SMALL_WORDS.has(word)))
        const letters = [...at.word]
        // People seldom mistype the first letter.
        const i = 1 + (place % (letters.length - 2))
        if (how === 'swap') letters.splice(i, 2, letters[i + 1] ?? '', letters[i] ?? '')
        else if (how === 'drop') letters.splice(i, 1)
        else letters.splice(i, 0, letters[i] ?? '')
        // "Ridge" for "fridge" is no slip that anybody could see: it is another of the words.
        const typed = wordsOf(letters.join(''))
        fc.pre(typed.length > 0)
        fc.pre(!typed.some(word => everyWord.has(word) || SMALL_WORDS.has(word)))
        // Mistyped, a phrase is parted at its "and": what each half says is then offered by itself.
        fc.pre(!/ (?:and|y) /.test(at.phrase))
        const line =
          at.phrase.slice(0, at.index) +
          letters.join('') +
          at.phrase.slice(at.index + at.word.length)
        // "Can my suaerkraut" reads as a question.
        fc.pre(askedIn(line, false) === 'no')
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
    expect(sureOf(reader, 'ortten eggs')).toEqual([])
  })
})
