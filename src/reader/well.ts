import type { Candidate } from './fact.ts'
import { BESIDE_WELL, NEGATORS, NO_LONGER } from './lexicon.ts'
import { cleaned } from './normal.ts'
import { outside, type Scene } from './scene.ts'
import type { PhraseSpot } from './spot.ts'
import { isDanger } from './worry.ts'

/** Whether a phrase says of everybody that nobody has any of several dangers: "everyone is fine". */
export const isOfEverybody = ({ meanings }: PhraseSpot): boolean =>
  meanings.every(
    ({ observation, answer, force }) =>
      force === 'rules-out' &&
      observation.about === 'person' &&
      answer !== null &&
      isDanger(observation, answer)
  )

/**
 * "Everyone is fine", as one fact. What befalls a person is ruled out by nothing less: the words stand
 * alone, nothing is asked, doubted, shaken or turned round, and nothing is told of another time.
 */
export function wellIn(scene: Scene): readonly Candidate[] {
  const { spots, stance, asked, crowded, repaired, text } = scene
  const [spot, ...others] = spots
  if (spot === undefined || others.length > 0 || !isOfEverybody(spot)) return []
  const [{ observation, text: matched } = { observation: undefined, text: '' }] = spot.meanings
  if (observation === undefined || spot.meanings.some(each => each.observation !== observation)) {
    return []
  }
  const rest = outside(scene, spots).map(place => scene.tokens[place]?.word ?? '')
  const quiet = rest.every(word => BESIDE_WELL.has(word) && !NEGATORS.has(word))
  const now = !cleaned(text)
    .split(/[^\p{L}]+/u)
    .some(word => NO_LONGER.has(word))
  const plain = asked === 'no' && !crowded && !stance.doubted && stance.shakers.length === 0
  if (!quiet || !now || !plain || repaired.size > 0) return []
  const signs = spot.meanings.flatMap(({ answer }) => (answer === null ? [] : [[answer, 'no']]))
  return [{ observation: observation.id, answer: Object.fromEntries(signs), matched, sure: true }]
}

/** Whether a fact rules out several signs that befall a person. */
export const isSaidOfAll = ({ sure, answer }: Candidate): boolean =>
  sure &&
  typeof answer === 'object' &&
  Object.keys(answer).length > 1 &&
  Object.values(answer).every(value => value === 'no')
