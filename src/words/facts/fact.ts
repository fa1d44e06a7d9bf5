import type { Fact } from '../../tree/facts.ts'

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

/** A part of the line, in the words typed, and what it may mean. */
export interface Fragment {
  readonly text: string
  readonly candidates: readonly Candidate[]
  readonly problem?: Problem
  /** The readings that can be true, when one was out of them. */
  readonly span?: { readonly from: number; readonly to: number }
}

/** A caller's own words, and what they tell. */
export interface SaidPhrase {
  readonly phrase: string
  readonly observation: string
  /** An answer or sign; null where the words name only what is observed. */
  readonly answer: string | null
}

/** Whether two facts tell the same: answers have no order of keys of their own. */
export const factKey = ({ observation, answer }: Fact): string =>
  JSON.stringify([observation, typeof answer === 'string' ? answer : Object.entries(answer).sort()])
