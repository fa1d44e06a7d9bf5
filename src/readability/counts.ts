import { syllable } from 'syllable'
import { sentencesIn } from '../translation/pair.ts'

/** What the formulas of reading ease are reckoned from. */
export interface TextCounts {
  readonly sentences: number
  readonly words: number
  readonly syllables: number
  /** Words of three syllables and more. */
  readonly polysyllables: number
}

/** How many syllables a word of a language has. */
export type CountSyllables = (word: string) => number

const WORD = /[\p{L}\d]+(?:[’'.,-]?[\p{L}\d]+)*/gu

export const wordsIn = (text: string): readonly string[] => text.match(WORD) ?? []

/** Of an English word; a number is read as one beat a digit, which is little for most. */
export const englishSyllables: CountSyllables = word =>
  /^\d/.test(word) ? word.replace(/\D/g, '').length : Math.max(1, syllable(word))

/** Vowels that make a syllable of their own in Spanish, and those that lean on a neighbor. */
const STRONG = /[aeoáéíóú]/g

/** Of a Spanish word, by its vowels: a weak one beside another makes no syllable unless it has an accent. */
export const spanishSyllables: CountSyllables = word => {
  if (/^\d/.test(word)) return word.replace(/\D/g, '').length
  const spoken = word
    .toLowerCase()
    .normalize('NFC')
    .replace(/qu(?=[eiéí])/g, 'k')
    .replace(/gu(?=[eiéí])/g, 'g')
    .replace(/y(?![aeiouáéíóú])/g, 'i')
  const groups = spoken.match(/[aeiouáéíóúü]+/g) ?? []
  return Math.max(
    1,
    groups.reduce((sum, group) => sum + Math.max(1, group.match(STRONG)?.length ?? 0), 0)
  )
}

/** Counts texts as one: each ends a sentence, whether a mark closes it or not. */
export function countsOf(
  texts: readonly string[],
  syllablesOf: CountSyllables = englishSyllables
): TextCounts {
  const words = texts.flatMap(wordsIn)
  const beats = words.map(syllablesOf)
  return {
    sentences: texts.reduce((sum, text) => sum + Math.max(1, sentencesIn(text).length), 0),
    words: words.length,
    syllables: beats.reduce((sum, each) => sum + each, 0),
    polysyllables: beats.filter(each => each >= 3).length
  }
}
