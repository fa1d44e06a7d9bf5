import type { ReviewState } from '../translation/ledger.ts'
import type { TextKind } from '../words/kinds.ts'

/** Where a text stands when it is given out: a hint for whoever translates. The ledger alone decides. */
export type ExchangeState = 'missing' | ReviewState

/** One text as it is given out to a translator. */
export interface ExchangeText {
  /** The file's name, a colon and the key: `steps:call-911`. */
  readonly id: string
  readonly kind: TextKind
  /** What the English alone does not say; null where it says enough. */
  readonly note: string | null
  /** The most words that its place has room for; null where it has room enough. */
  readonly most: number | null
  readonly english: string
  /** Null where nobody has translated it. */
  readonly target: string | null
  readonly state: ExchangeState
  /** `textHash` of the translation as it is given out, so that a later edit of it is seen. */
  readonly from: string
}

/** One text as it comes back. */
export interface ReturnedText {
  readonly id: string
  /** The English that the translator saw. */
  readonly english: string
  /** Null where the translator left it open. */
  readonly target: string | null
  /** The hash of the translation that was given out; null where the translator's program lost it. */
  readonly from: string | null
}

/** A file that comes back and cannot be read. Its message is one sentence with the place and the remedy. */
export class UnreadableExchange extends Error {
  override readonly name = 'UnreadableExchange'
}
