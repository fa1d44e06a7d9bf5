import type { Answers } from '../../src/tree/answers.ts'
import { choice, doubt, sign } from './told.ts'

/** Which of the three it is. */
export const kind = choice('kefir-kind')
/** What color it has. */
export const color = choice('kefir-color')
/** Smell and flow. */
export const signs = sign('kefir-signs')
/** Signs of lid, cap and glass. */
export const vessel = sign('kefir-vessel')
/** One of them in doubt. */
export const vesselInDoubt = doubt('kefir-vessel')
/** What is true of the milk. */
export const milk = sign('milk-history')
/** How many batches in a row were stringy. */
export const batches = choice('stringy-batches')
/** How the yogurt set. */
export const set = choice('yogurt-set')
/** How long it has fermented. */
export const time = choice('kefir-time')
/** Yogurt, and whatever else is told. */
export const yogurt = (told: Answers = {}): Answers => ({ ...kind('yogurt'), ...told })
/** Water kefir in a jar, and whatever else is told. */
export const water = (told: Answers = {}): Answers => ({ ...kind('water-kefir'), ...told })
/** Water kefir in a closed bottle, and whatever else is told. */
export const bottle = (told: Answers = {}): Answers => ({
  ...kind('water-kefir-bottle'),
  ...told
})
/** Nobody measured: how far it has come by now. */
export const unmeasured = (span: string, progress: string): Answers => ({
  'kefir-ph': 'unsure',
  ...time(span),
  'kefir-progress': progress
})
