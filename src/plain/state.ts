/** What a stop is, beside its question: levels raised so far, and the way through a screen of signs. */
export interface StopState {
  readonly question: string
  readonly levels: readonly number[]
  readonly group: number
  /** The first turn taken so far; past the last one for none. */
  readonly turn: number
  /** Where to go back to when a second answer settles the first. */
  readonly back: { readonly question: string; readonly levels: readonly number[] } | null
}

/** An outcome before its notes are gathered. */
export interface BareEnd {
  readonly levels: readonly number[]
  readonly emergency: readonly string[] | null
}
