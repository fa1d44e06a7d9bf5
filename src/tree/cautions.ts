/** The cautions that stand with every outcome of a tree, in the order they are said. */
export const CAUTIONS = [
  'who-must-not',
  'how-much',
  'acid-lowers-the-risk',
  'call-911',
  'call-doctor',
  'call-poison-help',
  'not-proof',
  'no-tested-recipe',
  'when-in-doubt'
] as const
export type Caution = (typeof CAUTIONS)[number]
