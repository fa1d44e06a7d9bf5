import type { Key } from '../key/key.ts'
import { must } from '../tree/must.ts'
import type { Track } from '../tree/observation.ts'
import { USES, type Verdict } from '../tree/tree.ts'

/** A letter for each track, the same in every language, so that two people can compare what they hold. */
const LETTERS: Readonly<Record<Track, string>> = { person: 'P', container: 'C', batch: 'B' }
const USE_LETTER = 'U'

/** What a verdict's sheet is called on the key: its track, and how cautious it is there. */
export const sheetCode = (
  verdicts: readonly Pick<Verdict, 'id' | 'track'>[],
  id: string
): string => {
  const { track } = must(
    verdicts.find(each => each.id === id),
    `verdict ${id}`
  )
  const place = verdicts.filter(each => each.track === track).findIndex(each => each.id === id)
  return `${LETTERS[track]}${place + 1}`
}

export const useCode = (use: (typeof USES)[number]): string => `${USE_LETTER}${USES.indexOf(use)}`

/** The notes that a key can take, in the order in which its leads name them. */
export const remarksOf = (leads: Key['leads']): readonly string[] => [
  ...new Set(
    leads.flatMap(({ rows, turns }) => [...rows, ...turns].flatMap(({ takes }) => takes.notes))
  )
]
