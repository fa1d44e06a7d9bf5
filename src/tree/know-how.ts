import type { Review, Rule } from './tree.ts'

/** Whom an answer names for what is beyond it; the office pack and the built-in numbers say how to reach them. */
export const BEYOND = [
  'emergency',
  'poison-help',
  'doctor',
  'pharmacist',
  'vet',
  'health-department',
  'state-specialist',
  'regulator',
  'office'
] as const
export type Beyond = (typeof BEYOND)[number]

/** The ferment of an answer that is about all of them. */
export const ANY_FERMENT = 'any'

/**
 * The answer to a question of how to, whether one may, and how long; never to "is my jar all right?".
 * Words: locales/<tag>/know-how.json.
 */
export interface KnowHow {
  readonly id: string
  /** The id of a tree, or `any`. */
  readonly ferment: string
  /** Source ids. */
  readonly because: readonly string[]
  readonly basis: Rule['basis']
  /** Whom to ask when it is beyond this answer, first the one to ask first. */
  readonly beyond: readonly Beyond[]
  readonly review: Review
  /** It allows nothing, so that it may stand beside a question that only a tree can settle. */
  readonly warns: boolean
  /** It stands on the class sheet of its ferment. */
  readonly inClass: boolean
  /** The drawings of what is done, in this order. */
  readonly pictures: readonly string[]
}
