import { SMALL_WORDS } from './lexicon.ts'
import { type Token, tokenOf } from './normal.ts'
import type { PhraseBook } from './phrase-book.ts'

/** Shorter words are near too many others. */
const SHORTEST = 6
/** A line of more words is read word for word. */
const MOST_WORDS = 40

/** The tokens with each likely typing error put right, and where that was done. */
export interface Repaired {
  readonly tokens: readonly Token[]
  readonly at: ReadonlySet<number>
}

/** Puts right a word that is one slip away from exactly one word of the phrases. */
export function repair(tokens: readonly Token[], book: PhraseBook): Repaired {
  const places = new Set<number>()
  if (tokens.length > MOST_WORDS) return { tokens, at: places }
  const repaired = tokens.map((token, index) => {
    const { word, raw } = token
    if (raw.length < SHORTEST || raw.length > 30 || book.known.has(word)) return token
    // People seldom mistype the first letter, and with another it is another word: missing, hissing.
    const near = book.spellings.filter(
      each =>
        each.length >= SHORTEST &&
        each[0] === raw[0] &&
        !SMALL_WORDS.has(tokenOf(each).word) &&
        oneSlip(raw, each)
    )
    const [only, ...others] = new Set(near.map(each => tokenOf(each).word))
    if (only === undefined || others.length > 0) return token
    places.add(index)
    return { word: only, raw: near[0] ?? only }
  })
  return { tokens: repaired, at: places }
}

/** Whether one letter added, left out, replaced, or two neighbours swapped, makes one of the other. */
export function oneSlip(a: string, b: string): boolean {
  if (a === b || Math.abs(a.length - b.length) > 1) return false
  let head = 0
  while (head < a.length && a[head] === b[head]) head++
  const swapped = a[head] === b[head + 1] && a[head + 1] === b[head]
  return (
    a.slice(head + 1) === b.slice(head + 1) ||
    a.slice(head) === b.slice(head + 1) ||
    a.slice(head + 1) === b.slice(head) ||
    (swapped && a.slice(head + 2) === b.slice(head + 2))
  )
}
