/** By what two look-alikes are told apart. */
export const FEATURES = [
  'height',
  'edge',
  'wetness',
  'place',
  'shape',
  'color',
  'smell',
  'next-day'
] as const
export type Feature = (typeof FEATURES)[number]

/** One of two look-alikes as drawn: from above, and from the side where that helps. */
export interface Seen {
  readonly above: string
  readonly side: string | null
}

/** Two things that callers mix up. Words: locales/<tag>/look-alikes.json. */
export interface LookAlike {
  readonly id: string
  readonly one: Seen
  readonly other: Seen
  /** The surest first. */
  readonly differs: readonly Feature[]
  /** The observations at which they are mixed up. */
  readonly asked: readonly string[]
  /** The trees it helps in. */
  readonly trees: readonly string[]
  /** Source ids. */
  readonly because: readonly string[]
}

/** Of a tree's pairs those that help with one observation, in the authors' order. */
export const lookAlikesFor = (
  all: readonly LookAlike[],
  observation: string
): readonly LookAlike[] => all.filter(({ asked }) => asked.includes(observation))
