import type { Fact } from '../evaluate/facts.ts'
import type { Range } from '../tree/observation.ts'

export type { Fact }

/** A fact with the words by which it was found; `sure` when the words can mean nothing else. */
export interface Candidate extends Fact {
  readonly matched: string
  readonly sure: boolean
}

export type Problem =
  /** A reading that the measure cannot have. */
  | 'out-of-span'
  | 'not-understood'
  /** Something was ruled out; of a choice that leaves all its other answers open. */
  | 'said-not-seen'
  /** The caller asks: nothing is told by it. */
  | 'asked'
  /** A later part of the line takes it back. */
  | 'taken-back'

/** A part of the line, in the words typed, and what it may mean. */
export interface Fragment {
  readonly text: string
  readonly candidates: readonly Candidate[]
  readonly problem?: Problem
  /** The readings that can be true, when one was out of them. */
  readonly span?: { readonly from: number; readonly to: number }
  /** It takes back what was told before of the same thing. */
  readonly corrects?: true
  /** What it says is not there: told before, it may have been a mistake. */
  readonly denies?: readonly Denied[]
}

/** A fact of a call, with the words that told it where it was typed. */
export interface Told extends Fact {
  readonly matched?: string
}

/** What is said not to be there, as the fact that would have told it, and the words for it. */
export interface Denied extends Fact {
  readonly matched: string
  /** "Nobody had any": it rules out the whole of it, in whatever words that was told. */
  readonly wholly: boolean
}

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
export interface Both {
  readonly observation: string
  readonly sign: string
  readonly of: readonly [string, string]
}

/** An answer of a choice that stands for readings of a unit. */
export interface Band {
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
  readonly both: readonly Both[]
  readonly bands: readonly Band[]
}

/** Whether two facts tell the same: answers have no order of keys of their own. */
export const factKey = ({ observation, answer }: Fact): string =>
  JSON.stringify([observation, typeof answer === 'string' ? answer : Object.entries(answer).sort()])
