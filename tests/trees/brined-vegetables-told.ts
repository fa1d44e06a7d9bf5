import type { Answers } from '../../src/tree/answers.ts'
import { days, meter } from './kombucha-jar-rows.ts'

/** What an ordinary crock of kraut shows where a row does not say otherwise. */
export const ORDINARY: Answers = { 'days-in-brine': days(35), 'salt-share': days(2.4) }

/** Which ferment it is. */
export const kind = (answer: string): Answers => ({ 'brine-kind': answer })
/** What stands on top. */
export const surface = (answer: string): Answers => ({ 'surface-growth': answer })
/** What color it has. */
export const color = (answer: string): Answers => ({ 'brine-color': answer })
/** Where a pink may come from. */
export const pigment = (answer: string): Answers => ({ 'pigment-source': answer })
/** One thing that happened to the jar. */
export const story = (sign: string): Answers => ({ 'jar-story': { [sign]: 'yes' } })
/** One thing told of a person. */
export const person = (sign: string): Answers => ({ 'people-signs': { [sign]: 'yes' } })
/** One smell. */
export const smell = (sign: string): Answers => ({ 'brine-smell': { [sign]: 'yes' } })
/** One sign of lid or glass. */
export const lid = (sign: string): Answers => ({ 'lid-and-glass': { [sign]: 'yes' } })
/** Signs of brine and food. */
export const brine = (...signs: readonly string[]): Answers => ({
  'brine-signs': Object.fromEntries(signs.map(sign => [sign, 'yes' as const]))
})
/** How warm it stood. */
export const warmth = (answer: string): Answers => ({ 'ferment-warmth': answer })
/** A flat film, and how long it has been there. */
export const film = (history: string): Answers => ({
  ...surface('flat-film'),
  'film-history': history
})
/** A pH read with a meter, and the day. */
export const acid = (ph: number, day: number): Answers => ({
  'brine-ph': meter(ph),
  'days-in-brine': days(day)
})
/** Salt by weight of cabbage, in percent. */
export const salt = (share: number): Answers => ({ 'salt-share': days(share) })
/** Nobody measured. */
export const noReading: Answers = { 'brine-ph': 'unsure' }
/** The same trouble was there before. */
export const again: Answers = { 'looked-before': 'second-look' }
/** Kimchi put straight in the fridge. */
export const coldKimchi: Answers = { ...kind('kimchi'), 'kimchi-start': 'straight-to-fridge' }

/** The source of what makers agree on. */
export const practice = 'common practice, no source'
/** The source of what is our own caution. */
export const caution = 'own caution, no source'

/** Ready, and nothing to say against it. */
export const fine = { person: null, container: null, batch: 'normal-growth', use: 'as-directed' }
/** Nothing against it, and not ready. */
export const growing = { person: null, container: null, batch: 'normal-growth', use: 'not-yet' }
/** A fault of quality alone. */
export const quality = { batch: 'quality-only', use: 'as-directed' }
/** A film of yeast. */
export const yeast = { batch: 'yeast-strands', use: 'as-directed' }
/** To be looked at again. */
export const wait = { batch: 'wait-and-recheck', use: 'not-yet' }
/** For the specialist. */
export const specialist = { batch: 'ask-specialist', use: 'not-yet' }
/** To be thrown out. */
export const discard = { batch: 'discard-and-sanitize', use: 'never' }
/** To be thrown out as mold. */
export const mold = { batch: 'likely-mold', use: 'never' }
/** To be left closed and bagged. */
export const toxin = { batch: 'possible-toxin', use: 'never' }
/** Under pressure, and nothing else. */
export const pressure = { container: 'pressure-caution', batch: 'normal-growth', use: 'not-yet' }
/** An emergency, which leaves the jar unspoken. */
export const emergency = { person: 'emergency', container: null, batch: null, use: 'never' }
