import type { SignValue } from '../tree/answers.ts'
import { unsureOf } from '../tree/tell.ts'
import type { Fact } from './fact.ts'
import { meaningKey, type Phrase } from './phrase-book.ts'
import { isDanger } from './worry.ts'

/** The fact that a phrase tells when it is affirmed, denied or doubted; null when it tells none. */
export function factOf({ observation, answer }: Phrase, value: SignValue): Fact | null {
  const { id } = observation
  if (answer === 'none') return null
  if (value === 'unsure') return unsureFact(observation, answer)
  if (answer === null) return null
  // What befalls a person is never ruled out by words typed in a hurry.
  if (value === 'no' && observation.about === 'person' && isDanger(observation, answer)) return null
  if (observation.kind === 'signs') return { observation: id, answer: { [answer]: value } }
  return value === 'yes' ? { observation: id, answer } : null
}

/** None of the signs that are asked; what was only smelled rules out no more than smells. */
export function noneFact(
  observation: Phrase['observation'],
  smelled: ReadonlySet<string>
): Fact | null {
  if (observation.kind !== 'signs') return null
  const asked = observation.signs.filter(({ volunteered }) => !volunteered)
  const smells = asked.filter(({ id }) => smelled.has(meaningKey(observation.id, id)))
  const none = (smells.length > 0 ? smells : asked).map(({ id }) => [id, 'no'] as const)
  return { observation: observation.id, answer: Object.fromEntries(none) }
}

/**
 * Of a screen of signs one sign is doubted, or all that are asked when only the screen is named; null
 * where none is asked.
 */
function unsureFact(observation: Phrase['observation'], sign: string | null): Fact | null {
  const { id } = observation
  if (observation.kind === 'signs' && sign !== null) {
    return { observation: id, answer: { [sign]: 'unsure' } }
  }
  if (observation.kind === 'signs' && observation.signs.every(each => each.volunteered)) return null
  return { observation: id, answer: unsureOf({}, observation)[id] ?? 'unsure' }
}

/** Whether phrases all mean one answer or sign. */
export const meanOne = (phrases: readonly Phrase[]): boolean =>
  new Set(phrases.map(({ observation, answer }) => `${observation.id} ${answer}`)).size === 1
