import { withPhone } from './outcome-lines.ts'
import type { Said } from './say.ts'

/**
 * The most characters of a text message: four parts of a message in letters with accents, 67 characters
 * each (3GPP TS 23.038 and 23.040, cited from memory).
 */
export const LONGEST_MESSAGE = 268

/** Whom somebody calls who needs help. */
const FOR_PEOPLE: ReadonlySet<string> = new Set(['emergency', 'poison-help', 'doctor'])

/**
 * An outcome as one text message: what it is, whom to call, as many of the first steps as fit whole, and
 * where all of it stands. What it is, whom a person has to call and the link are never cut.
 */
export function textMessage(said: Said, link: string): string {
  const [first, ...others] = said.verdicts
  // What may burst is said first; whoever needs help needs the call all the same.
  const person = others.find(({ track }) => track === 'person')
  const forSomebody = said.emergency || first?.track === 'person' || person !== undefined
  const call = said.calls.find(({ to }) => FOR_PEOPLE.has(to)) ?? said.calls[0]
  const must = [
    ...[first, person].flatMap(each => (each === undefined ? [] : (each.message ?? each.name))),
    ...(forSomebody && call !== undefined ? [`${withPhone(call.name, call.phone)}.`] : [])
  ]
  const steps: string[] = []
  for (const [index, step] of said.doNow.entries()) {
    const more = [...steps, `${index + 1}. ${step}`]
    if ([...must, ...more, link].join(' ').length > LONGEST_MESSAGE) break
    steps.push(`${index + 1}. ${step}`)
  }
  return [...must, ...steps, link].join(' ')
}
