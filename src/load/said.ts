import type { AuthoredObservations } from './schemas/observations.ts'

/** A caller's own words, and what they tell. */
export interface Said {
  readonly phrase: string
  readonly observation: string
  /** An answer or sign; null where the words name only what is observed. */
  readonly answer: string | null
}

/** Callers' own words by language. */
export function saidBy(
  observations: AuthoredObservations
): Readonly<Record<string, readonly Said[]>> {
  const all: Record<string, Said[]> = {}
  const add = (
    said: Readonly<Record<string, readonly string[]>> | undefined,
    observation: string,
    answer: string | null
  ): void => {
    for (const [tag, phrases] of Object.entries(said ?? {})) {
      const ofTag = all[tag] ?? []
      all[tag] = ofTag
      ofTag.push(...phrases.map(phrase => ({ phrase, observation, answer })))
    }
  }
  for (const [id, observation] of Object.entries(observations)) {
    add(observation.said, id, null)
    const answers =
      observation.kind === 'choice'
        ? observation.answers
        : observation.kind === 'signs'
          ? observation.signs
          : {}
    for (const [answer, { said }] of Object.entries(answers)) add(said, id, answer)
  }
  return all
}
