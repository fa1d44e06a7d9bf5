import type { Candidate } from './fact.ts'
import { BODILY, BRIDGES, IMPERSONAL, NEGATORS } from './lexicon.ts'
import { factOf } from './meaning.ts'
import type { Phrase, PhraseBook } from './phrase-book.ts'
import type { Scene } from './scene.ts'
import { isDanger } from './worry.ts'

/** How far after a "not" the body's own verb may stand: "can't seem to really swallow". */
const REACH = 4

/** Opens the hearing of a body that fails: "not" beside breathe, swallow, see, and what the authors add. */
export function openDistress(book: PhraseBook): (scene: Scene) => readonly Candidate[] {
  const grave = book.phrases.filter(
    ({ observation, answer, spoken, words }) =>
      spoken &&
      answer !== null &&
      observation.about === 'person' &&
      isDanger(observation, answer) &&
      words.some(word => NEGATORS.has(word))
  )
  const signsOf = new Map<string, readonly Phrase[]>()
  for (const [verb = ''] of BODILY) {
    signsOf.set(
      verb,
      grave.filter(({ words }) => words.includes(verb))
    )
  }
  return scene => {
    const verbs = scene.stance.negators.flatMap(place => verbsAfter(scene, place))
    return verbs.flatMap(verb =>
      (signsOf.get(verb) ?? []).flatMap((meaning): readonly Candidate[] => {
        const fact = factOf(meaning, 'yes')
        return fact ? [{ ...fact, matched: meaning.text, sure: false }] : []
      })
    )
  }
}

function verbsAfter(scene: Scene, negator: number): readonly string[] {
  const { tokens } = scene
  return BODILY.flatMap(([verb = '', particle]) => {
    const offset = tokens
      .slice(negator + 1, negator + 1 + REACH)
      .findIndex(({ word }) => word === verb)
    const place = negator + 1 + offset
    if (offset < 0 || IMPERSONAL.has(tokens[place - 1]?.word ?? '')) return []
    const rest = tokens.slice(place + 1)
    if (particle !== undefined && !rest.some(({ word }) => word === particle)) return []
    return seesThing(scene, place) ? [] : [verb]
  })
}

/** "I can't see any fuzz" tells of the fuzz. */
function seesThing({ tokens, spots, names }: Scene, verb: number): boolean {
  let place = verb + 1
  while (BRIDGES.has(tokens[place]?.word ?? '')) place++
  return [...spots, ...names].some(
    ({ from, meanings }) =>
      from === place && meanings.every(({ observation }) => observation.about !== 'person')
  )
}
