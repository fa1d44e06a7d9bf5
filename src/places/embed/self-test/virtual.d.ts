declare module 'virtual:jarside/self-test' {
  /** The tree that is tried where the page names none, and by language tag the words as written. */
  export const tree: string
  export const texts: Readonly<Record<string, unknown>>
}
