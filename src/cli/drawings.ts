import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Loaded } from '../load/load.ts'
import { PROJECT } from './read-project.ts'

/**
 * The drawings of every answer and of every pair of look-alikes, by picture id; one that is missing is left
 * out, and words stand alone in its place.
 */
export function drawingsOf(
  project: string | undefined,
  pictures: Loaded['pictures'],
  lookAlikes: Loaded['lookAlikes']
): Readonly<Record<string, string>> {
  const ofAnswers = Object.values(pictures).flatMap(({ answers }) => Object.values(answers))
  const ofPairs = lookAlikes.flatMap(({ one, other }) =>
    [one.above, one.side, other.above, other.side].filter(id => id !== null)
  )
  const files = [...new Set([...ofAnswers, ...ofPairs])].map(
    id => [id, join(project ?? PROJECT, `shared/pictures/${id}.svg`)] as const
  )
  return Object.fromEntries(
    files
      .filter(([, file]) => existsSync(file))
      .map(([id, file]) => [id, readFileSync(file, 'utf8').trim()])
  )
}
