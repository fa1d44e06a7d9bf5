import type { Grammar } from './grammar.ts'
import { GRAMMARS } from './grammars.ts'

type Runs = 'doubts' | 'hedges' | 'shakerRuns' | 'bodily'
type Patterns = 'corrections' | 'refusals' | 'pleas' | 'looks' | 'runOn'
type Listed = Exclude<keyof Grammar, Runs | Patterns>

function singular(word: string): string {
  if (word.length < 4) return word
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`
  if (/(?:ch|sh|x|ss)es$/.test(word)) return word.slice(0, -2)
  return /[^suií]s$/.test(word) ? word.slice(0, -1) : word
}

/** "Canning" and "canned" must never be "can", nor "nursing" "nurse"; "thing" is no ending. */
const WHOLE = /thing$|^cann(?:ed|ing)$|^nursing$|eed$/
const VOWEL = /[aeiouy]/

/**
 * A word without what only bends it: plural, English -ing and -ed, Spanish -o and -a. Both sides of every
 * comparison go through it, so that "it hisses", "hissing" and "hissed" are one.
 */
export function baseOf(word: string): string {
  const one = singular(word)
  if (WHOLE.test(one)) return one
  const bare = /^(.{3,})(?:ing|ed)$/.exec(one)?.[1]
  if (bare !== undefined && one.length >= 6 && VOWEL.test(bare)) {
    if (one.endsWith('ied')) return `${bare.slice(0, -1)}y`
    return bare.replace(/([bdgmnprt])\1$/, '$1').replace(/(?<=...)e$/, '')
  }
  return one.length >= 5 ? one.replace(/[eoa]$/, '') : one
}

const listed = (key: Listed): readonly string[] =>
  Object.values(GRAMMARS).flatMap(grammar => grammar[key].split(/\s+/).filter(Boolean))
const setOf = (...keys: Listed[]): ReadonlySet<string> =>
  new Set(keys.flatMap(key => listed(key).map(baseOf)))

// Every language at once: a caller mixes them, and none of these words contradicts another's.
export const DROPPED = setOf('dropped')
export const NEGATORS = setOf('negators')
export const SEEN = setOf('seen')
export const BRIDGES = setOf('bridges', 'bridgesAfterNo')
export const BRIDGES_AFTER_NO = setOf('bridgesAfterNo')
export const LIGHT = setOf('light')
export const SAYING = setOf('saying')
export const LIGHT_BESIDE_READINGS = setOf('light', 'besideReadings', 'begun', 'saying')
export const CORRECTING = setOf('correcting')
export const IMPERSONAL = setOf('impersonal')
export const PERSONS = setOf('persons', 'kin')
/** Whoever speaks of a jar as their own. */
export const OWNERS = setOf('owners')
export const KIN = setOf('kin')
export const HAS = setOf('has')
export const CARRYING = setOf('carrying')
export const AGES = setOf('ages')
export const FROM = setOf('from')
export const BELOW = setOf('below')
export const TURNED_OUT = setOf('turnedOut')
export const SENSES = setOf('senses')
export const SHAKERS = setOf('shakers')
export const AND = setOf('and')
export const OR = setOf('or')
export const BUT = setOf('but')
export const PLACES = setOf('places')
export const SELF = setOf('self')
export const PETS = setOf('pets')
export const COLD = setOf('cold')
export const KITCHEN = setOf('kitchen')
export const EXCEPTING = setOf('excepting')
export const BESIDE_WELL = setOf('besideWell')
export const NO_LONGER: ReadonlySet<string> = new Set(listed('noLonger'))

/** Each doubt as the words that are left of it in a line. */
export const HEDGES = runsOf('hedges')
export const DOUBTS = [...runsOf('doubts'), ...HEDGES]
/** What a body does, each as its word and one that must follow. */
export const BODILY = runsOf('bodily')
export const SHAKER_RUNS = runsOf('shakerRuns')

function runsOf(key: Runs): readonly (readonly string[])[] {
  return Object.values(GRAMMARS).flatMap(grammar =>
    grammar[key].map(run => run.split(' ').map(baseOf))
  )
}

/** Numbers in words, zero to thirty-one. */
export const NUMBERS: ReadonlyMap<string, number> = new Map(
  Object.values(GRAMMARS).flatMap(({ numbers }) =>
    numbers.split(/\s+/).map((word, index) => [word, index] as const)
  )
)

/** Words that only say how something is meant: no look-up looks for them. */
export const SMALL_WORDS: ReadonlySet<string> = new Set([
  ...setOf(
    'negators',
    'bridges',
    'light',
    'besideReadings',
    'begun',
    'saying',
    'shakers',
    'correcting',
    'ages',
    'persons',
    'and',
    'or',
    'but'
  ),
  ...setOf('places', 'seen', 'dropped', 'unsearched'),
  ...DOUBTS.flat(),
  ...SHAKER_RUNS.flat()
])
