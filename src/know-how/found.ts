/** What comes of a question. */
export interface FoundAnswers {
  /**
   * What has to come before any answer. `emergency`: the words tell of one, and nothing is answered. `look`:
   * whether one jar is all right is settled by looking at it, and only answers that allow nothing stand beside.
   */
  readonly lead: 'emergency' | 'look' | null
  /** The tree to look with, or whose food the question names; null where it names none. */
  readonly ferment: string | null
  /** Ids of answers, best first; none where the question is not answered here. */
  readonly answers: readonly string[]
}

/** An answer as it is searched, in one language. */
export interface Searched {
  readonly id: string
  readonly ask: string
  /** Other words for it, parted by semicolons. */
  readonly said: string
  readonly answer: string
}

/** What is searched besides the words. */
export interface SearchedAnswer {
  readonly id: string
  readonly ferment: string
  readonly warns: boolean
}
