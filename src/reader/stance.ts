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
  const free = (at: number) => !spots.some(spot => covers(spot, at))
  const places = (words: ReadonlySet<string>) =>
    tokens.flatMap(({ word }, at) => (words.has(word) ? [at] : []))
  const negators = places(NEGATORS)
  return {
    doubted: tokens.some((_, at) => free(at) && doubtAt(tokens, at)),
    hedged: !tokens.some((_, at) => free(at) && doubtAt(tokens, at) && !runAt(tokens, at, HEDGES)),
    negators,
    denied: new Set(negators.filter(free).flatMap(at => reach(tokens, spots, at))),
    shakers: tokens.flatMap(({ word }, at) =>
      free(at) &&
      (SHAKERS.has(word) || runAt(tokens, at, SHAKER_RUNS) || othersBrew(tokens, at, foods))
        ? [at]
        : []
    ),
    joins: [...places(AND), ...places(OR)].filter(free)
  }
}

/** "My mom's jar", "el frasco de mi vecina". */
function othersBrew(tokens: readonly Token[], at: number, foods: ReadonlySet<string>): boolean {
  const [one, two, three, four] = tokens.slice(at, at + 4)
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
  let at = negator + 1
  while (at < tokens.length) {
    const word = tokens[at]?.word ?? ''
    const spot = spots.find(({ from }) => from === at)
    if (spot === undefined && bridges.has(word)) at++
    else {
      const to = spot?.to ?? at + 1
      for (; at < to; at++) reached.push(at)
      if (!OR.has(tokens[at]?.word ?? '')) break
      at++
    }
  }
  return reached
}
