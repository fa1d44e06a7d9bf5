import type { Answers } from '../../src/tree/answers.ts'
import type { Expected } from './kombucha-jar-rows.ts'

/** One answer to one choice. */
export const choice =
  (observation: string) =>
  (answer: string): Answers => ({ [observation]: answer })

/** One or more signs that are there. */
export const sign =
  (observation: string) =>
  (...signs: readonly string[]): Answers => ({
    [observation]: Object.fromEntries(signs.map(one => [one, 'yes' as const]))
  })

/** One sign that nobody is sure of. */
export const doubt =
  (observation: string) =>
  (one: string): Answers => ({ [observation]: { [one]: 'unsure' } })

/** Something told of the people around it. */
export const person = sign('people-signs')
/** What stands on a brine, a dough, milk or vinegar. */
export const growth = choice('surface-growth')
/** The same trouble was there before. */
export const again: Answers = { 'looked-before': 'second-look' }

/** The source of what makers agree on. */
export const practice = 'common practice, no source'
/** The source of what is our own caution. */
export const caution = 'own caution, no source'
/** The source of what was written down from memory. */
export const memory = 'from memory, to be checked'
/** Where mold on soft food is published. */
export const molds = 'USDA FSIS, Molds on food (copy)'

/** Ready, and nothing to say against it. */
export const fine: Expected = {
  person: null,
  container: null,
  batch: 'normal-growth',
  use: 'as-directed'
}
/** Nothing against it, and not ready. */
export const growing: Expected = {
  person: null,
  container: null,
  batch: 'normal-growth',
  use: 'not-yet'
}
/** A fault of quality alone. */
export const quality: Expected = { batch: 'quality-only', use: 'as-directed' }
/** To be looked at again. */
export const wait: Expected = { batch: 'wait-and-recheck', use: 'not-yet' }
/** For the specialist. */
export const specialist: Expected = { batch: 'ask-specialist', use: 'not-yet' }
/** To be thrown out. */
export const discard: Expected = { batch: 'discard-and-sanitize', use: 'never' }
/** To be thrown out as mold. */
export const mold: Expected = { batch: 'likely-mold', use: 'never' }
/** To be left closed and bagged. */
export const toxin: Expected = { batch: 'possible-toxin', use: 'never' }
/** A closed vessel that needs care. */
export const pressure: Expected = { container: 'pressure-caution', use: 'not-yet' }
/** A vessel that nobody touches. */
export const hazard: Expected = { container: 'pressure-hazard', use: 'never' }
/** An emergency, which leaves the jar unspoken. */
export const emergency: Expected = {
  person: 'emergency',
  container: null,
  batch: null,
  use: 'never'
}
