import { type Candidate, factKey } from './fact.ts'
import { factOf } from './meaning.ts'
import type { Phrase, PhraseBook } from './phrase-book.ts'
import type { Scene } from './scene.ts'

/** What a piece says that its speaker does not know; sure when it can be about one thing only. */
export function doubtedBy(scene: Scene, book: PhraseBook, numbered: boolean): readonly Candidate[] {
  const senses = scene.spots.flatMap(({ meanings }) => meanings)
  const alsoNames = scene.spots.flatMap(
    ({ from, to }) => book.naming.get(wordsAt(scene, from, to)) ?? []
  )
  const named = [...scene.names.flatMap(({ meanings }) => meanings), ...alsoNames]
    // Whoever names a sign and its screen doubts the sign.
    .filter(({ observation }) => !senses.some(each => each.observation === observation))
  const candidates = [...senses, ...named].flatMap((meaning: Phrase): readonly Candidate[] => {
    const fact = factOf(meaning, 'unsure')
    // "Maybe the lid" says nothing of the lid that could be doubted.
    const sure = meaning.readable && !(meaning.answer === null && scene.stance.hedged)
    return fact ? [{ ...fact, matched: meaning.text, sure }] : []
  })
  const one = new Set(candidates.map(factKey)).size === 1
  return candidates.map(each => ({
    ...each,
    sure: each.sure && one && !numbered && !scene.crowded
  }))
}

const wordsAt = ({ tokens }: Scene, from: number, to: number): string =>
  tokens
    .slice(from, to)
    .map(({ word }) => word)
    .join(' ')

/** "I have no strips": what is not measured is offered as not known. */
export function lackedBy({ names, stance, tokens }: Scene): readonly Candidate[] {
  if (tokens.some(({ number }) => number !== undefined)) return []
  return names
    .filter(name => stance.negators.some(place => place < name.from))
    .flatMap(({ meanings }) => meanings)
    .filter(({ observation }) => observation.kind === 'measure')
    .flatMap((meaning): readonly Candidate[] => {
      const fact = factOf(meaning, 'unsure')
      return fact ? [{ ...fact, matched: meaning.text, sure: false }] : []
    })
}
