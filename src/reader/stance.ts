import {
  AND,
  BRIDGES,
  BRIDGES_AFTER_NO,
  DOUBTS,
  HEDGES,
  KIN,
  NEGATORS,
  OR,
  SEEN,
  SHAKER_RUNS,
  SHAKERS
} from './lexicon.ts'
import { isFood, type Token } from './normal.ts'
import { covers, type PhraseSpot } from './spot.ts'

/** How the words of a piece are meant, apart from what they name. */
export interface Stance {
  /** The speaker says that they do not know. */
  readonly doubted: boolean
  /** They only soften what they say. */
  readonly hedged: boolean
  /** Places of words that turn round what follows. */
  readonly negators: readonly number[]
  /** Places that a "no" reaches for certain. */
  readonly denied: ReadonlySet<number>
  /** Places of words with which a phrase tells of another time, another jar or a worry. */
  readonly shakers: readonly number[]
  /** An "and" or "or" within the piece. */
  readonly joins: readonly number[]
}

/** Reads the small words of a piece. A word inside a phrase belongs to the phrase alone. */
export function stanceOf(
  tokens: readonly Token[],
  spots: readonly PhraseSpot[],
  foods: ReadonlySet<string>
): Stance {
  const free = (place: number) => !spots.some(spot => covers(spot, place))
  const places = (words: ReadonlySet<string>) =>
    tokens.flatMap(({ word }, index) => (words.has(word) ? [index] : []))
  const negators = places(NEGATORS)
  return {
    doubted: tokens.some((_, index) => free(index) && doubtAt(tokens, index)),
    hedged: !tokens.some(
      (_, index) => free(index) && doubtAt(tokens, index) && !runAt(tokens, index, HEDGES)
    ),
    negators,
    denied: new Set(negators.filter(free).flatMap(place => reach(tokens, spots, place))),
    shakers: tokens.flatMap(({ word }, index) =>
      free(index) &&
      (SHAKERS.has(word) || runAt(tokens, index, SHAKER_RUNS) || othersBrew(tokens, index, foods))
        ? [index]
        : []
    ),
    joins: [...places(AND), ...places(OR)].filter(free)
  }
}

/** "My mom's jar", "el frasco de mi vecina". */
function othersBrew(tokens: readonly Token[], place: number, foods: ReadonlySet<string>): boolean {
  const [one, two, three, four] = tokens.slice(place, place + 4)
  if (!one || !two) return false
  if (KIN.has(one.word)) return isFood(two, foods)
  const whose = KIN.has(three?.word ?? '') || KIN.has(four?.word ?? '')
  return isFood(one, foods) && two.word === 'de' && whose
}

const runAt = (
  tokens: readonly Token[],
  from: number,
  runs: readonly (readonly string[])[]
): boolean => runs.some(run => run.every((word, offset) => tokens[from + offset]?.word === word))

function doubtAt(tokens: readonly Token[], from: number): boolean {
  return DOUBTS.some(doubt => {
    if (!runAt(tokens, from, [doubt])) return false
    // Without its accent "no sé", I do not know, is "no se", one does not.
    const next = tokens[from + doubt.length]?.word ?? ''
    return doubt.join(' ') !== 'no se' || !SEEN.has(next)
  })
}

/** What a negator rules out: the phrase or word next to it, and what an "or" adds. */
function reach(
  tokens: readonly Token[],
  spots: readonly PhraseSpot[],
  negator: number
): readonly number[] {
  const reached: number[] = []
  const bridges = tokens[negator]?.word === 'no' ? BRIDGES_AFTER_NO : BRIDGES
  let place = negator + 1
  while (place < tokens.length) {
    const word = tokens[place]?.word ?? ''
    const spot = spots.find(({ from }) => from === place)
    if (spot === undefined && bridges.has(word)) place++
    else {
      const to = spot?.to ?? place + 1
      for (; place < to; place++) reached.push(place)
      if (!OR.has(tokens[place]?.word ?? '')) break
      place++
    }
  }
  return reached
}
