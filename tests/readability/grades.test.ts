import { describe, expect, test } from 'vitest'
import {
  countsOf,
  englishSyllables,
  spanishSyllables,
  wordsIn
} from '../../src/readability/counts.ts'
import { fernandezHuerta, gradesOf, inflesz, infleszBand } from '../../src/readability/grades.ts'
import { commandsIn, habitsBroken } from '../../src/readability/habits.ts'
import { longWords, withoutNeeded } from '../../src/readability/long-words.ts'

/** The sentence by which Flesch-Kincaid is commonly shown: 13 words, 24 syllables, published as 11.3. */
const PLATYPUS = 'The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.'
const counts = (words: number, syllables: number, sentences: number, polysyllables = 0) => ({
  words,
  syllables,
  sentences,
  polysyllables
})

describe('the English formulas', () => {
  test('the platypus sentence', () => {
    expect(gradesOf(counts(13, 24, 1)).kincaid).toBeCloseTo(11.265, 3)
    // The package reads the ends of “Australian” and “reptilian” as two syllables each.
    expect(countsOf([PLATYPUS])).toMatchObject({ words: 13, sentences: 1, syllables: 26 })
  })

  // 1.0430 √n + 3.1291 for 30 sentences.
  test.each([
    [12, 6.74],
    [20, 7.79],
    [30, 8.84]
  ])('SMOG of %i long words in 30 sentences is %f', (polysyllables, grade) => {
    expect(gradesOf(counts(300, 400, 30, polysyllables)).smog).toBeCloseTo(grade, 2)
  })

  // The published table for counting by hand: the nearest square root and 3.
  test.each([
    [7, 12, 6],
    [13, 20, 7],
    [21, 30, 8],
    [31, 42, 9],
    [43, 56, 10],
    [57, 72, 11],
    [73, 90, 12],
    [91, 110, 13],
    [111, 132, 14]
  ])('SMOG of %i to %i long words agrees with the table’s grade %i', (from, to, grade) => {
    for (const polysyllables of [from, to]) {
      const { smog } = gradesOf(counts(300, 400, 30, polysyllables))
      expect(Math.abs(smog - grade)).toBeLessThan(1.13)
    }
  })

  test('syllables of words of this work', () => {
    const words = {
      jar: 1,
      kombucha: 3,
      fridge: 1,
      refrigerator: 5,
      botulism: 4,
      bottle: 2,
      moldy: 2
    }
    for (const [word, count] of Object.entries(words))
      expect(englishSyllables(word), word).toBe(count)
    expect(wordsIn('Call 1-800-222-1222, don’t wait: 3.5 mL.')).toEqual([
      'Call',
      '1-800-222-1222',
      'don’t',
      'wait',
      '3.5',
      'mL'
    ])
  })
})

describe('the Spanish formulas', () => {
  test('syllables', () => {
    const words = {
      ...{
        agua: 2,
        moho: 2,
        tirelo: 3,
        tírelo: 3,
        médico: 3,
        día: 2,
        guíe: 2,
        queso: 2,
        pingüino: 3
      },
      ...{ hoy: 1, y: 1, leer: 2, cuidado: 3, vacíe: 3, refrigerador: 5, ayuda: 3, fermentación: 4 }
    }
    for (const [word, count] of Object.entries(words))
      expect(spanishSyllables(word), word).toBe(count)
  })

  test('ease falls with longer words and longer sentences, by the constants', () => {
    expect(fernandezHuerta(counts(100, 200, 10))).toBeCloseTo(206.84 - 120 - 10.2, 6)
    expect(inflesz(counts(100, 200, 10))).toBeCloseTo(206.835 - 124.6 - 10, 6)
    expect([85, 70, 60, 50, 30].map(infleszBand)).toEqual([
      'very easy',
      'rather easy',
      'normal',
      'somewhat hard',
      'very hard'
    ])
  })
})

describe('long words', () => {
  const needed = { botulism: 'the name of the illness', thermometer: 'the tool' }

  test('that are needed count as two syllables, and the list is held both ways', () => {
    const { notListed, unused } = longWords(['Botulism is dangerous, dangerous.'], needed)
    expect(notListed).toEqual([['dangerous', 2]])
    expect(unused).toEqual(['thermometer'])
    expect(countsOf(['Botulism kills.'], withoutNeeded(needed)).polysyllables).toBe(0)
    expect(countsOf(['Botulism kills.']).polysyllables).toBe(1)
  })
})

describe('the wording of steps', () => {
  const commands = commandsIn([
    'Wash your hands.',
    'Throw it out.',
    'If it leaks, leave it.',
    'Never taste it.'
  ])

  test('what begins a command is learned from the steps', () => {
    expect([...commands]).toEqual(['wash', 'throw'])
  })

  test.each([
    ['Wash your hands.', []],
    ['Never taste it.', ['forbids-first']],
    ['Wash it; do not leave it without water.', ['denies-twice']],
    ['Wash it. Throw it out.', ['two-actions']],
    [`Wash ${'it and '.repeat(10)}it.`, ['long']]
  ])('%s', (step, broken) => {
    expect(habitsBroken(step, commands)).toEqual(broken)
  })
})
