/** What the search knows of a language; every list is in plain words without accents. */
export interface AskedLanguage {
  /** Words that say nothing of what is asked. */
  readonly small: string
  /** Words for one thing, the first of which stands for all. */
  readonly alike: readonly string[]
  /** Signs of an emergency, as regular expressions over cleaned text. */
  readonly emergencies: readonly string[]
  /** Questions that judge one jar: what only a look at it can settle. */
  readonly judging: readonly string[]
  /** What makes such a question one of time or manner again: "when is it ready". */
  readonly spares: readonly string[]
}
