import { EN } from './english.ts'
import type { AskedLanguage } from './language.ts'
import { ES } from './spanish.ts'

/** The languages that questions are asked in; another is searched without small words and likes. */
export const LANGUAGES: readonly AskedLanguage[] = [EN, ES]

const wordsIn = (list: string): readonly string[] => list.split(/\s+/).filter(Boolean)

/** A line without case, accents, marks and doubled spaces, its short forms written out. */
export const cleaned = (line: string): string =>
  line
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[’‘ʼ`´]/g, "'")
    .replace(/\bcan't\b/g, 'cannot')
    .replace(/n't\b/g, ' not')
    .replace(/'(?:s|re)\b/g, ' is')
    .replace(/[^\p{L}\p{N}% ]+/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim()

/** Endings that turn one word into another of the same thing: plurals, English -ing, Spanish genders and verbs. */
const ENDINGS: readonly (readonly [RegExp, number])[] = [
  [/(?:s|es)$/, 4],
  [/(?:ing|ed)$/, 6],
  [/(?:ando|iendo|ados?|adas?)$/, 7],
  [/(?:ar|er|ir)$/, 6],
  [/[aeo]$/, 4]
]

/** What is left of a word without its ending. */
export function stemOf(word: string): string {
  let stem = word.endsWith('ss') ? word.slice(0, -1) : word
  for (const [ending, least] of ENDINGS) {
    if (stem.length < least) continue
    stem = stem.replace(ending, '')
  }
  return stem
}

const SMALL = new Set(LANGUAGES.flatMap(({ small }) => wordsIn(small)))

/** By stem, the word that stands for all of its likes. */
const ALIKE = new Map(
  LANGUAGES.flatMap(({ alike }) =>
    alike.flatMap(group => {
      const [first = '', ...rest] = wordsIn(group).map(stemOf)
      return [first, ...rest].map(stem => [stem, `=${first}`] as const)
    })
  )
)

/** The words of a line that say something of what is asked, each as the terms it is found by. */
export const termsOf = (line: string): readonly (readonly string[])[] =>
  cleaned(line)
    .split(' ')
    .filter(word => word !== '' && !SMALL.has(word))
    .map(word => {
      const stem = stemOf(word)
      const alike = ALIKE.get(stem)
      return alike === undefined ? [stem] : [stem, alike]
    })
