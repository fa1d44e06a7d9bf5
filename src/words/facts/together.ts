import { type Candidate, type Fragment, factKey } from './fact.ts'
import { AND, CORRECTING, LIGHT_BESIDE_READINGS, SMALL_WORDS } from './lexicon.ts'
import { factOf } from './meaning.ts'
import { type Token, wordsOf } from './normal.ts'
import type { Phrase, PhraseBook } from './phrase-book.ts'
import { oneSlip } from './typos.ts'
import { isDanger } from './worry.ts'

/** A part that was read, with its words as they were typed. */
export interface Part {
  readonly fragment: Fragment
  readonly tokens: readonly Token[]
}

/** A phrase of two halves with an "and" between, by the words that make each. */
interface Halves {
  readonly meaning: Phrase
  readonly left: readonly string[]
  readonly right: readonly string[]
}

/** Opens the look at all parts of a line together: what one says can change what another tells. */
export function openTogether(book: PhraseBook): (parts: readonly Part[]) => readonly Fragment[] {
  const halves = book.phrases.flatMap((meaning): readonly Halves[] => {
    const { observation, answer, spoken, words } = meaning
    const joint = words.findIndex(word => AND.has(word))
    if (!spoken || answer === null || joint < 1 || !isDanger(observation, answer)) return []
    const [left, right] = [words.slice(0, joint), words.slice(joint + 1)].map(content)
    return left?.length && right?.length ? [{ meaning, left, right }] : []
  })
  return parts => corrected(parts, joined(parts, halves))
}

const content = (words: readonly string[]): readonly string[] =>
  words.filter(word => !SMALL_WORDS.has(word) || /\d/.test(word))

/**
 * "Pregnant. She drank some": whoever says both halves of a graver phrase in two parts, or nearly so,
 * has the phrase offered, and neither half is taken for the gentler thing it says alone.
 */
function joined(parts: readonly Part[], halves: readonly Halves[]): readonly Fragment[] {
  const fragments = parts.map(({ fragment }) => fragment)
  const taken = new Set(
    fragments.flatMap(({ candidates }) => candidates.filter(({ sure }) => sure)).map(factKey)
  )
  return halves.reduce<readonly Fragment[]>((all, { meaning, left, right }) => {
    const fact = factOf(meaning, 'yes')
    if (!fact || taken.has(factKey(fact))) return all
    const lefts = parts.map(part => holdsNearly(part, left))
    const rights = parts.map(part => holdsNearly(part, right))
    const both = lefts.some((one, i) => one && rights.some((other, k) => other && i !== k))
    if (!both) return all
    const offered: Candidate = { ...fact, matched: meaning.text, sure: false }
    return all.map((fragment, at) =>
      lefts[at] || rights[at] ? withFirst(fragment, offered) : fragment
    )
  }, fragments)
}

function withFirst(fragment: Fragment, offered: Candidate): Fragment {
  const { problem: _, ...rest } = fragment
  const others = fragment.candidates
    .filter(each => factKey(each) !== factKey(offered))
    .map(each => (each.observation === offered.observation ? { ...each, sure: false } : each))
  return { ...rest, candidates: [offered, ...others] }
}

const holdsNearly = ({ tokens }: Part, words: readonly string[]): boolean =>
  words.every(word => tokens.some(each => nearly(each.word, word)))

/** The same, one slip in a short word, or two in a long one. */
function nearly(typed: string, known: string): boolean {
  if (typed === known) return true
  if (known.length < 5 || typed.length < 4 || typed.length > 30) return false
  if (oneSlip(typed, known)) return true
  const shorter = [...typed].map((_, at) => typed.slice(0, at) + typed.slice(at + 1))
  return known.length >= 7 && shorter.some(each => each === known || oneSlip(each, known))
}

/** "pH 3.1, no wait, 3.4": a reading that is taken back is offered beside the one that replaces it. */
function corrected(parts: readonly Part[], fragments: readonly Fragment[]): readonly Fragment[] {
  return fragments.map((fragment, at) => {
    const next = parts[at + 1]
    if (!next || !takesBack(next.tokens)) return fragment
    const candidates = fragment.candidates.map(each =>
      typeof each.answer === 'object' && 'reading' in each.answer ? { ...each, sure: false } : each
    )
    return { ...fragment, candidates }
  })
}

/** Whether words only take back what was said, with a number in its place or without. */
export function takesBack(tokens: readonly Token[]): boolean {
  const [first] = tokens
  if (!first || !CORRECTING.has(first.word)) return false
  const quiet = ({ word, number }: Token) =>
    number !== undefined ||
    CORRECTING.has(word) ||
    LIGHT_BESIDE_READINGS.has(word) ||
    UNITS.has(word)
  return tokens.every(quiet)
}

const UNITS: ReadonlySet<string> = new Set(wordsOf('day week ph f c'))
