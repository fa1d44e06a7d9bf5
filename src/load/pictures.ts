import type { AuthoredObservations } from './schemas/observations.ts'

/** The picture ids of one observation: its own mark, and those of its answers or signs. */
export interface ObservationPictures {
  readonly own: string | null
  readonly answers: Readonly<Record<string, string>>
}

/** By observation id. */
export type Pictures = Readonly<Record<string, ObservationPictures>>

/** Which drawing stands for which answer. */
export function picturesBy(observations: AuthoredObservations): Pictures {
  return Object.fromEntries(
    Object.entries(observations).map(([id, observation]) => {
      const parts =
        observation.kind === 'choice'
          ? observation.answers
          : observation.kind === 'signs'
            ? observation.signs
            : {}
      const answers = Object.entries(parts).flatMap(([answer, { picture }]) =>
        picture === undefined ? [] : [[answer, picture] as const]
      )
      return [id, { own: observation.picture ?? null, answers: Object.fromEntries(answers) }]
    })
  )
}
