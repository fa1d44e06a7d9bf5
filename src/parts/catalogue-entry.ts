/** A tree as it can be chosen, before anything more of it has arrived. */
export interface CatalogueEntry {
  readonly id: string
  readonly edition: number
  readonly fingerprint: string
  /** The day on which it was withdrawn; null while it stands. */
  readonly withdrawn: string | null
  /** The drawing by which callers find it, as SVG; empty where it has none. */
  readonly drawing: string
}
