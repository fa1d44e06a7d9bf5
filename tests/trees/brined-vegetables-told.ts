import type { Answers } from '../../src/tree/answers.ts'
import { choice, days, meter, sign } from './told.ts'

/** Which ferment it is. */
export const kind = choice('brine-kind')
/** What stands on top. */
export const surface = choice('surface-growth')
/** What color it has. */
export const color = choice('brine-color')
/** Where a pink may come from. */
export const pigment = choice('pigment-source')
/** One thing that happened to the jar. */
export const story = sign('jar-story')
/** One smell. */
export const smell = sign('brine-smell')
/** One sign of lid or glass. */
export const lid = sign('lid-and-glass')
/** Signs of brine and food. */
export const brine = sign('brine-signs')
/** How warm it stood. */
export const warmth = choice('ferment-warmth')
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
/** Kimchi put straight in the fridge. */
export const coldKimchi: Answers = { ...kind('kimchi'), 'kimchi-start': 'straight-to-fridge' }
