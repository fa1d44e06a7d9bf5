/** What the rules must know of a language to hold its texts against another's. Patterns match small letters. */
export interface LanguageFacts {
  readonly tag: string
  /** Whether spaces part its words; where they do not, a form may stand inside a row of letters. */
  readonly spaced: boolean
  /** Signs that a text has for each sign of its English, at least and at most. */
  readonly lengths: readonly [least: number, most: number]
  /**
   * Numbers that are written as words; the article that also means one is none of them. Where none are
   * listed, numbers in words are not compared.
   */
  readonly numbers: Readonly<Record<string, string>>
  /** By unit, how it is written: a regular expression without boundaries. */
  readonly units: Readonly<Record<string, string>>
  /** What may stand between a number and its unit: "1–2 more weeks". */
  readonly beforeUnits: string
  /** What stands before or after a number to say that it is the least or the most. */
  readonly bounds: {
    readonly orMore: string
    readonly orLess: string
    readonly over: string
    readonly under: string
  }
  /**
   * How the denials of a sentence are held against the English ones: as many (`counted`), or, where many a
   * plain word holds one ("unripe"), no fewer, and none where the English has none (`none-lost`).
   */
  readonly denials: 'counted' | 'none-lost'
  /** Words that turn a clause round. */
  readonly negations: RegExp
  /** Words that carry a denial on to the next thing: "nor". */
  readonly chained: RegExp
  /** "Without". */
  readonly lacking: RegExp
  /** Words that only go on with a denial, where none stands before them. */
  readonly stray: RegExp
  /** Turns of speech that deny twice and mean it once. */
  readonly saidOnce: RegExp
  /** Words that may stand for a denial of the other language, and need not. */
  readonly softNegations: RegExp
  /** Words that may stand for "without" and a noun. */
  readonly softLacking: RegExp
  /** What parts the clauses of a sentence, each of which may say no once. */
  readonly clauses: RegExp
  /** What joins the items of a list besides commas. */
  readonly joins: RegExp
  /** Common words that few other languages have: they give away a text that was left in this one. */
  readonly givesAway: ReadonlySet<string>
}
