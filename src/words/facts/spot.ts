import type { Token } from './normal.ts'
import type { Phrase, PhraseBook } from './phrase-book.ts'

/** A phrase found in a line, as whole words, and all that it can mean. */
export interface Spot {
  readonly from: number
  /** One past its last word. */
  readonly to: number
  readonly meanings: readonly Phrase[]
}

/** The longest phrases that stand in the tokens and do not overlap, in the order of the tokens. */
export function spotPhrases(
  tokens: readonly Token[],
  phrases: ReadonlyMap<string, readonly Phrase[]>,
  longest: PhraseBook['longest'],
  taken: readonly Spot[] = []
): readonly Spot[] {
  const covered = new Set(taken.flatMap(positions))
  const spots: Spot[] = []
  for (let length = Math.min(longest, tokens.length); length > 0; length--) {
    for (let from = 0; from + length <= tokens.length; from++) {
      const run = tokens.slice(from, from + length)
      const meanings = phrases.get(run.map(({ word }) => word).join(' '))
      if (!meanings || run.some((_, offset) => covered.has(from + offset))) continue
      const spot = { from, to: from + length, meanings }
      for (const at of positions(spot)) covered.add(at)
      spots.push(spot)
    }
  }
  return spots.sort((a, b) => a.from - b.from)
}

/** The places of a spot's words. */
export const positions = ({ from, to }: Spot): readonly number[] =>
  Array.from({ length: to - from }, (_, offset) => from + offset)

export const covers = ({ from, to }: Spot, at: number): boolean => at >= from && at < to
