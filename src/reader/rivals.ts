import type { Phrase } from './phrase-book.ts'
import { answersOf } from './worry.ts'

/**
 * Adds to the meanings of a phrase the more worrying answers of its choice whose own phrase holds all
 * of its words: whoever says "pink" may be on the way to "pink spots".
 */
export function withRivals(
  telling: ReadonlyMap<string, readonly Phrase[]>
): ReadonlyMap<string, readonly Phrase[]> {
  const spoken = [...telling.values()].flat().filter(phrase => phrase.spoken)
  const byObservation = new Map<string, Phrase[]>()
  for (const phrase of spoken) {
    const { id, kind } = phrase.observation
    // Of answers that are kinds none is more worrying than another.
    if (kind === 'choice' && phrase.observation.unordered !== true)
      byObservation.set(id, [...(byObservation.get(id) ?? []), phrase])
  }
  return new Map(
    [...telling].map(([key, meanings]) => {
      const rivals = meanings.flatMap(meaning =>
        (byObservation.get(meaning.observation.id) ?? []).filter(other => outdoes(other, meaning))
      )
      return [key, [...meanings, ...rivals]]
    })
  )
}

function outdoes(other: Phrase, { observation, answer, words }: Phrase): boolean {
  const order = answersOf(observation)
  return (
    other.words.length > words.length &&
    order.indexOf(other.answer ?? '') < order.indexOf(answer ?? '') &&
    words.every(word => other.words.includes(word))
  )
}
