import type { Derivation } from './derived.ts'

/** What an answer tells about; also the three tracks that a verdict can stand on. */
export type Track = 'person' | 'container' | 'batch'

/** The tracks, in the order in which they are said: a person before a jar. */
export const TRACKS: readonly Track[] = ['person', 'container', 'batch']

/** One thing a person can see, smell, measure or tell. */
export type Observation = ChoiceObservation | SignsObservation | MeasureObservation

export interface ChoiceObservation {
  readonly kind: 'choice'
  readonly id: string
  readonly about: Track
  /** Most worrying first: of two answers given at once the first counts. `unsure` is not listed. */
  readonly answers: readonly ChoiceAnswer[]
  /** The observation to which an answer here counts as a second answer. */
  readonly settles?: string
  /** No answer is more worrying than the next in all cases: of two told either can be so. */
  readonly unordered?: boolean
}

export interface ChoiceAnswer {
  readonly id: string
  /** An answer that must never end gently. */
  readonly danger: boolean
  /** What an ordinary, untroubled jar shows; `rest: usual` in a rule means these. */
  readonly usual: boolean
  /** The answer of the settled observation that this one stands for. */
  readonly standsFor?: string
}

export interface SignsObservation {
  readonly kind: 'signs'
  readonly id: string
  readonly about: Track
  readonly signs: readonly Sign[]
}

/** One of several independent signs on a screen: yes, no, unsure or not yet told. */
export interface Sign {
  readonly id: string
  readonly danger: boolean
  /** Accepted when told, never asked. */
  readonly volunteered: boolean
}

export interface MeasureObservation {
  readonly kind: 'measure'
  readonly id: string
  readonly about: Track
  /** The unit that its readings, its span and its limits are in. */
  readonly unit: Unit
  /** No instrument: a count, which is exact. */
  readonly instruments: readonly Instrument[]
  /** The readings that can be true at all, both ends included. */
  readonly span: { readonly from: number; readonly to: number }
  readonly usual?: Range
  /** How it can be worked out from plain quantities; a direct reading wins. */
  readonly derived?: Derivation
}

export type Unit =
  | 'ph'
  | 'day'
  | 'fahrenheit'
  | 'percent'
  | 'milliliter'
  | 'gram'
  | 'gram-per-liter'
  /** How far one pH lies above another; only worked out, never read off. */
  | 'ph-difference'

export interface Instrument {
  readonly id: string
  /** Half the width of the interval around a reading, in the measure's unit. */
  readonly plusMinus: number
}

/** A part of a measure's line. Each end is open or closed as written; a missing end is endless. */
export interface Range {
  readonly atLeast?: number
  readonly over?: number
  readonly under?: number
  readonly atMost?: number
}
