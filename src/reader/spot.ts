import { AND, BUT, LIGHT, NEGATORS, OR, PLACES } from './lexicon.ts'
import type { Token } from './normal.ts'
import type { Phrase } from './phrase-book.ts'

/** A phrase found in a line, and all that it can mean. */
export interface PhraseSpot {
  readonly from: number
  /** One past its last word. */
  readonly to: number
  /** The places of its words; small words may stand between them. */
  readonly at: readonly number[]
  readonly meanings: readonly Phrase[]
}

/** The phrases that begin with a word, longest first. */
export type Starts = ReadonlyMap<string, readonly Run[]>

/** The words of a phrase, and all that they can mean. */
export interface Run {
  readonly words: readonly string[]
  readonly meanings: readonly Phrase[]
}

/** So many small words may stand between two words of a phrase: "the lid is kind of bulging". */
const MOST_BETWEEN = 3

export function startsOf(phrases: ReadonlyMap<string, readonly Phrase[]>): Starts {
  const starts = new Map<string, Run[]>()
  for (const meanings of phrases.values()) {
    const words = meanings[0]?.words ?? []
    const [first = ''] = words
    starts.set(first, [...(starts.get(first) ?? []), { words, meanings }])
  }
  for (const runs of starts.values()) runs.sort((a, b) => b.words.length - a.words.length)
  return starts
}

/** The longest phrases that stand in the tokens and do not overlap, in the order of the tokens. */
export function spotPhrases(
  tokens: readonly Token[],
  starts: Starts,
  taken: readonly PhraseSpot[] = []
): readonly PhraseSpot[] {
  const covered = new Set(taken.flatMap(({ at }) => at))
  const found = tokens.flatMap((_, from) =>
    (starts.get(tokens[from]?.word ?? '') ?? []).flatMap(({ words, meanings }): PhraseSpot[] => {
      const positions = places(tokens, from, words)
      return positions === null
        ? []
        : [{ from, to: (positions.at(-1) ?? from) + 1, at: positions, meanings }]
    })
  )
  const width = ({ from, to }: PhraseSpot) => to - from
  found.sort((a, b) => b.at.length - a.at.length || width(a) - width(b) || a.from - b.from)
  const spots: PhraseSpot[] = []
  for (const spot of found) {
    if (spot.at.some(place => covered.has(place))) continue
    for (const place of spot.at) covered.add(place)
    spots.push(spot)
  }
  return spots.sort((a, b) => a.from - b.from)
}

/** Where the words stand one after another, with nothing between them but what says nothing. */
function places(
  tokens: readonly Token[],
  from: number,
  words: readonly string[]
): readonly number[] | null {
  const positions = [from]
  for (const word of words.slice(1)) {
    let next = (positions.at(-1) ?? from) + 1
    const last = next + MOST_BETWEEN
    while (next < last && tokens[next]?.word !== word && isFiller(tokens[next])) next++
    if (tokens[next]?.word !== word) return null
    positions.push(next)
  }
  return positions
}

const isFiller = (token: Token | undefined): boolean =>
  token !== undefined &&
  (LIGHT.has(token.word) || PLACES.has(token.word)) &&
  ![AND, OR, BUT, NEGATORS].some(words => words.has(token.word))

/** The places of a spot's words. */
export const positions = ({ at }: PhraseSpot): readonly number[] => at

export const covers = ({ at }: PhraseSpot, place: number): boolean => at.includes(place)
