import type { Use } from '../tree/tree.ts'

/** A walk on paper: every place where a reader stops, and every outcome that the walk can come to. */
export interface PlainWalk {
  /** In the order in which a reader can come to them; the first is the start. */
  readonly stops: readonly Stop[]
  readonly ends: readonly End[]
  /** By question the number under which a reader finds it. */
  readonly numbers: ReadonlyMap<string, number>
}

/**
 * One question as a reader meets it with what was raised before. Of a screen of signs it asks one group
 * at a time: signs that raise and turn alike. What was told before is not kept: where a tree reads an
 * answer again, the reader is asked to think back.
 */
export interface Stop {
  readonly question: string
  /** Which group of the screen's signs; 0 for anything else. */
  readonly group: number
  readonly exits: readonly Exit[]
}

/** One way on from a stop. */
export interface Exit {
  readonly on: On
  readonly leads: Leads
  /** Notes that are met by leaving this way, with the answer that says so. */
  readonly notes: readonly MetNote[]
}

export type Leads = { readonly stop: number } | { readonly end: number }

/** The answers for which an exit stands. */
export type On =
  | { readonly kind: 'answers'; readonly among: readonly string[] }
  /** Some sign of the group is seen; none is, and one is not sure; or none of them. */
  | {
      readonly kind: 'signs'
      readonly signs: readonly string[]
      readonly value: 'yes' | 'unsure' | 'no'
    }
  /** A screen left by the first turn that is taken, or by none of them. */
  | { readonly kind: 'turn'; readonly taken: Turn | null; readonly before: readonly Turn[] }
  /** A reading, by instrument, from and to these numbers, both included. */
  | { readonly kind: 'readings'; readonly runs: readonly ReadingRun[] }
  /** The only way on. */
  | { readonly kind: 'any' }

/** Any of these signs is a yes, or, where it says so, not sure. */
export interface Turn {
  readonly signs: readonly string[]
  readonly orUnsure: boolean
}

/** Readings of one instrument, or of none, that lead the same way. */
export interface ReadingRun {
  readonly instrument: string | null
  readonly from: number
  readonly to: number
}

/** A note, and the answer by which it is met; null where every walk that comes by meets it. */
export interface MetNote {
  readonly note: string
  readonly when: When | null
}

/** What a reader said at a question. */
export interface When {
  readonly question: string
  readonly on: On
}

/** An outcome: the verdicts and the use for certain, the notes as far as they can be met on the way. */
export interface End {
  readonly person: string | null
  readonly container: string | null
  readonly batch: string | null
  readonly use: Use
  /** Notes that every walk to it meets. */
  readonly always: readonly string[]
  /** By note the answers of which each adds it. */
  readonly perhaps: ReadonlyMap<string, readonly When[]>
}
