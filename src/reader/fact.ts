import type { Fact } from '../evaluate/facts.ts'

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

/** Whether two facts tell the same: answers have no order of keys of their own. */
export const factKey = ({ observation, answer }: Fact): string =>
  JSON.stringify([observation, typeof answer === 'string' ? answer : Object.entries(answer).sort()])
