import { GRAMMARS, type Grammar } from './grammar.ts'

type Runs = 'doubts' | 'shakerRuns'
type Listed = Exclude<keyof Grammar, Runs>

/** Reads a word without its plural: both sides of every comparison go through it. */
export function singular(word: string): string {
  if (word.length < 4) return word
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`
  if (/(?:ch|sh|x|ss)es$/.test(word)) return word.slice(0, -2)
  return /[^suií]s$/.test(word) ? word.slice(0, -1) : word
}

const listed = (key: Listed): readonly string[] =>
  Object.values(GRAMMARS).flatMap(grammar => grammar[key].split(/\s+/).filter(Boolean))
const setOf = (...keys: Listed[]): ReadonlySet<string> =>
  new Set(keys.flatMap(key => listed(key).map(singular)))

// Every language at once: a caller mixes them, and none of these words contradicts another's.
export const DROPPED = setOf('dropped')
export const NEGATORS = setOf('negators')
export const SEEN = setOf('seen')
export const BRIDGES = setOf('bridges', 'bridgesAfterNo')
export const BRIDGES_AFTER_NO = setOf('bridgesAfterNo')
export const LIGHT = setOf('light')
export const LIGHT_BESIDE_READINGS = setOf('light', 'besideReadings')
export const SHAKERS = setOf('shakers')
export const AND = setOf('and')
export const OR = setOf('or')
export const BUT = setOf('but')
export const PLACES = setOf('places')

/** Each doubt as the words that are left of it in a line. */
export const DOUBTS = runsOf('doubts')
export const SHAKER_RUNS = runsOf('shakerRuns')

function runsOf(key: Runs): readonly (readonly string[])[] {
  return Object.values(GRAMMARS).flatMap(grammar =>
    grammar[key].map(run => run.split(' ').map(singular))
  )
}

/** Numbers in words, zero to twenty. */
export const NUMBERS: ReadonlyMap<string, number> = new Map(
  Object.values(GRAMMARS).flatMap(({ numbers }) =>
    numbers.split(/\s+/).map((word, index) => [word, index] as const)
  )
)

/** Words that only say how something is meant: no look-up looks for them. */
export const SMALL_WORDS: ReadonlySet<string> = new Set([
  ...setOf('negators', 'bridges', 'light', 'besideReadings', 'shakers', 'and', 'or', 'but'),
  ...setOf('places', 'seen', 'dropped', 'unsearched'),
  ...DOUBTS.flat(),
  ...SHAKER_RUNS.flat()
])
