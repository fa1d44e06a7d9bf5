import { fleschKincaid } from 'flesch-kincaid'
import { smogFormula } from 'smog-formula'
import type { TextCounts } from './counts.ts'

/** US school grades that a text asks of its reader. */
export interface Grades {
  /** Flesch-Kincaid (1975). */
  readonly kincaid: number
  /** SMOG (McLaughlin 1969), meant for 30 sentences and more. */
  readonly smog: number
}

/** The most that advice may ask: what to do, and a whole sheet. */
export const MOST_GRADE = { actions: 6, sheet: 8 } as const

export const gradesOf = ({ sentences, words, syllables, polysyllables }: TextCounts): Grades => ({
  kincaid: fleschKincaid({ sentence: sentences, word: words, syllable: syllables }),
  smog: smogFormula({ sentence: sentences, polysillabicWord: polysyllables })
})

/**
 * Reading ease of a Spanish text, 0 to about 120, more is easier: Fernández Huerta (1959), with sentences
 * reckoned as words a sentence, as the correction of its misprint has it (both from memory).
 */
export const fernandezHuerta = ({ sentences, words, syllables }: TextCounts): number =>
  206.84 - 60 * (syllables / words) - 1.02 * (words / sentences)

/** Reading ease of a Spanish text on the INFLESZ scale (Szigriszt 1993, Barrio-Cantalejo 2008; from memory). */
export const inflesz = ({ sentences, words, syllables }: TextCounts): number =>
  206.835 - 62.3 * (syllables / words) - words / sentences

/** The bands of INFLESZ (from memory), each from its lowest value on. */
const BANDS = [
  [80, 'very easy'],
  [65, 'rather easy'],
  [55, 'normal'],
  [40, 'somewhat hard']
] as const

export const infleszBand = (ease: number): string =>
  BANDS.find(([from]) => ease >= from)?.[1] ?? 'very hard'
