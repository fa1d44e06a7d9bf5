import type { Range } from './observation.ts'

/** A caller's own words, and what they tell. */
export interface SaidPhrase {
  readonly phrase: string
  readonly observation: string
  /** An answer or sign, or `none` of the signs; null where the words name only what is observed. */
  readonly answer: string | null
  /** Whether they tell it, may mean it, or say that it is not there. */
  readonly force: 'told' | 'may-mean' | 'rules-out'
}

/** A sign that two others told together amount to. */
export interface SignPair {
  readonly observation: string
  readonly sign: string
  readonly of: readonly [string, string]
}

/** An answer of a choice that stands for readings of a unit. */
export interface UnitBand {
  readonly observation: string
  readonly answer: string
  readonly unit: 'hour' | 'fahrenheit'
  readonly range: Range
}

/** Everything that callers are known to say. */
export interface CallersWords {
  /** By language tag. */
  readonly phrases: Readonly<Record<string, readonly SaidPhrase[]>>
  /** What is made, and in what, by language tag. */
  readonly foods: Readonly<Record<string, readonly string[]>>
  /** By tree: what its ferment is called, in every language at once. A name may be that of several. */
  readonly ferments: Readonly<Record<string, readonly string[]>>
  readonly both: readonly SignPair[]
  readonly bands: readonly UnitBand[]
}
