import { englishSyllables, wordsIn } from './counts.ts'

/** Long words that advice needs, each with the reason; a word stands for its plural too. */
export type NeededWords = Readonly<Record<string, string>>

const singular = (word: string): string => word.toLowerCase().replace(/(?:’s|s)$/, '')

/** Whether a word is among those that are needed. */
export const isNeeded = (word: string, needed: NeededWords): boolean =>
  Object.hasOwn(needed, word.toLowerCase()) || Object.hasOwn(needed, singular(word))

/** Syllables with needed long words as if they had two: what the other words ask of a reader. */
export const withoutNeeded =
  (needed: NeededWords) =>
  (word: string): number =>
    isNeeded(word, needed) ? Math.min(2, englishSyllables(word)) : englishSyllables(word)

/** The allow-list held against texts: long words that nobody listed, by how often they stand; listed ones that stand nowhere. */
export function longWords(texts: readonly string[], needed: NeededWords) {
  const long = new Map<string, number>()
  const used = new Set<string>()
  for (const word of texts.flatMap(wordsIn)) {
    if (/\d/.test(word)) continue
    if (isNeeded(word, needed))
      used.add(Object.hasOwn(needed, word.toLowerCase()) ? word.toLowerCase() : singular(word))
    else if (englishSyllables(word) >= 3) {
      const same = word.toLowerCase()
      long.set(same, (long.get(same) ?? 0) + 1)
    }
  }
  return {
    notListed: [...long].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1)),
    unused: Object.keys(needed).filter(word => !used.has(word))
  }
}
