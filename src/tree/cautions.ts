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

/** Said after `who-must-not` of a batch that is not thrown out, where a tree's authors wrote it. */
export const HOWEVER_IT_LOOKS = 'however-it-looks'
