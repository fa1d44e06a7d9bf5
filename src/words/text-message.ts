import { withPhone } from './outcome-lines.ts'
import type { Said } from './say.ts'

/**
 * The most characters of a text message: four parts of a message in letters with accents, 67 characters
 * each (3GPP TS 23.038 and 23.040, cited from memory).
 */
export const LONGEST_MESSAGE = 268

/**
 * An outcome as one text message: what it is, whom to call, as many of the first steps as fit whole, and
 * where all of it stands. What it is, whom a person has to call and the link are never cut.
 */
export function textMessage(said: Said, link: string): string {
  const [first] = said.verdicts
  const urgent = said.emergency || first?.track === 'person' ? said.calls.slice(0, 1) : []
  const must = [
    first?.message ?? first?.name ?? '',
    ...urgent.map(({ name, phone }) => `${withPhone(name, phone)}.`)
  ]
  const steps: string[] = []
  for (const [at, step] of said.doNow.entries()) {
    const more = [...steps, `${at + 1}. ${step}`]
    if ([...must, ...more, link].join(' ').length > LONGEST_MESSAGE) break
    steps.push(`${at + 1}. ${step}`)
  }
  return [...must, ...steps, link].join(' ')
}
