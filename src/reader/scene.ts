import type { Asked } from './asked.ts'
import type { Piece } from './cut.ts'
import { NEGATORS, SENSES, SMALL_WORDS } from './lexicon.ts'
import { type Token, tokensOf } from './normal.ts'
import type { Phrase, PhraseBook } from './phrase-book.ts'
import { covers, type PhraseSpot, spotPhrases } from './spot.ts'
import { type Stance, stanceOf } from './stance.ts'
import { repair } from './typos.ts'

/** A piece of a line with all that is found in it, before anything is concluded. */
export interface Scene {
  readonly text: string
  readonly tokens: readonly Token[]
  /** Phrases that tell of an answer or a sign. */
  readonly spots: readonly PhraseSpot[]
  /** Phrases all of whose words stand somewhere in the piece, in any order: longer than those. */
  readonly scattered: readonly PhraseSpot[]
  /** Names of observations elsewhere in the piece. */
  readonly names: readonly PhraseSpot[]
  /** Where a typing error was put right. */
  readonly repaired: ReadonlySet<number>
  readonly stance: Stance
  /** It asks: whoever asks does not tell. */
  readonly asked: Asked
  /** More words than one fact takes: what is found in it is offered, never taken. */
  readonly crowded: boolean
  /** A sense is named, here or before an "and": "smells like vinegar and bread". */
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
  const every = spotPhrases(tokens, book.tellingStarts)
  const senses = sensed || tokens.some(({ word }) => SENSES.has(word))
  // The same words again tell nothing new.
  const chosen = crowded ? [...new Map(every.map(spot => [spot.meanings, spot])).values()] : every
  const spots = senses ? chosen.map(spot => ofSense(spot, book)) : chosen
  const stance = stanceOf(tokens, spots, book.foods)
  return {
    text,
    tokens,
    spots,
    scattered: crowded ? [] : scatteredIn(tokens, spots, book),
    names: spotPhrases(tokens, book.namingStarts, spots),
    repaired: at,
    stance,
    asked,
    crowded,
    sensed: senses,
    plain:
      asked === 'no' &&
      !crowded &&
      !stance.doubted &&
      stance.shakers.length === 0 &&
      !tokens.some(({ word }) => NEGATORS.has(word))
  }
}

/** "Smells like cheese" is told of the smell, whatever else cheese can mean. */
function ofSense(spot: PhraseSpot, book: PhraseBook): PhraseSpot {
  const smelled = spot.meanings.filter(
    ({ observation, words }) =>
      book.sensed.has(observation.id) || words.some(word => SENSES.has(word))
  )
  return smelled.length > 0 ? { ...spot, meanings: smelled } : spot
}

const isContent = (word: string): boolean => !SMALL_WORDS.has(word) && !/\d/.test(word)

function scatteredIn(
  tokens: readonly Token[],
  spots: readonly PhraseSpot[],
  book: PhraseBook
): readonly PhraseSpot[] {
  const here = new Map(tokens.map(({ word }, index) => [word, index]))
  const found = new Map<string, PhraseSpot>()
  for (const meaning of candidatesFor(here, book)) {
    const content = meaning.words.filter(isContent)
    const places = content.map(word => here.get(word) ?? -1).sort((a, b) => a - b)
    const whole = new Set(places).size >= 2 && !places.includes(-1)
    const inSpot = spots.some(spot => places.every(place => covers(spot, place)))
    if (!whole || inSpot || meaning.words.some(word => NEGATORS.has(word) || /\d/.test(word)))
      continue
    const key = content.toSorted().join(' ')
    const same = found.get(key)
    found.set(key, {
      from: places[0] ?? 0,
      to: (places.at(-1) ?? 0) + 1,
      at: places,
      meanings: [...(same?.meanings ?? []), meaning]
    })
  }
  return [...found.values()]
}

function candidatesFor(here: ReadonlyMap<string, number>, book: PhraseBook): ReadonlySet<Phrase> {
  return new Set([...here.keys()].flatMap(word => book.spokenWith.get(word) ?? []))
}

/** The places of words that belong to none of the spots. */
export const outside = (scene: Scene, spots: readonly PhraseSpot[]): readonly number[] =>
  scene.tokens.flatMap((_, index) => (spots.some(spot => covers(spot, index)) ? [] : [index]))
