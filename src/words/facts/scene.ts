import type { Piece } from './cut.ts'
import { NEGATORS, SENSES } from './lexicon.ts'
import { type Token, tokensOf } from './normal.ts'
import type { PhraseBook } from './phrase-book.ts'
import { covers, type Spot, spotPhrases } from './spot.ts'
import { type Stance, stanceOf } from './stance.ts'
import { repair } from './typos.ts'

/** A piece of a line with all that is found in it, before anything is concluded. */
export interface Scene {
  readonly text: string
  readonly tokens: readonly Token[]
  /** Phrases that tell of an answer or a sign. */
  readonly spots: readonly Spot[]
  /** Names of observations elsewhere in the piece. */
  readonly names: readonly Spot[]
  /** Where a typing error was put right. */
  readonly repaired: ReadonlySet<number>
  readonly stance: Stance
  /** It asks: whoever asks does not tell. */
  readonly asked: boolean
  /** More words than one fact takes: what is found in it is offered, never taken. */
  readonly crowded: boolean
  /** A sense was named before an "and": "smells like vinegar and bread". */
  readonly sensed: boolean
  /** Nothing asked, doubted, shaken, ruled out or crowded. */
  readonly plain: boolean
}

/** A caller's sentence is seldom longer. */
const MOST_WORDS = 60

/** Looks at a piece of a line. */
export function openScene({ text, asked, sensed }: Piece, book: PhraseBook): Scene {
  const { tokens, at } = repair(tokensOf(text), book)
  const crowded = tokens.length > MOST_WORDS
  const every = spotPhrases(tokens, book.telling, book.longest)
  // The same words again tell nothing new.
  const spots = crowded ? [...new Map(every.map(spot => [spot.meanings, spot])).values()] : every
  const stance = stanceOf(tokens, spots)
  return {
    text,
    tokens,
    spots,
    names: spotPhrases(tokens, book.naming, book.longest, spots),
    repaired: at,
    stance,
    asked,
    crowded,
    sensed: sensed && !tokens.some(({ word }) => SENSES.has(word)),
    plain:
      !asked &&
      !crowded &&
      !stance.doubted &&
      stance.shakers.length === 0 &&
      !tokens.some(({ word }) => NEGATORS.has(word))
  }
}

/** The places of words that belong to none of the spots. */
export const outside = (scene: Scene, spots: readonly Spot[]): readonly number[] =>
  scene.tokens.flatMap((_, at) => (spots.some(spot => covers(spot, at)) ? [] : [at]))
