/** Where in an authored file something stands; line and column count from 1. */
export interface Place {
  readonly file: string
  readonly line: number
  readonly column: number
  /** How much of the line is meant, never past its end. */
  readonly length: number
}

/** The places of a tree's parts, keyed like `questions/growth/dry-fuzzy` or `rules/fuzz-is-mold`. */
export type Places = Readonly<Record<string, Place>>

/** The first letter of a file, for what concerns the file as a whole. */
export const startOf = (file: string): Place => ({ file, line: 1, column: 1, length: 1 })
