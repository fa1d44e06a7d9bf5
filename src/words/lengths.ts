/** The most words that a place has room for, in English; the layout tests hold the screens at these. */
export const MOST_WORDS = {
  /** An answer card. */
  answer: 5,
  /** A line of a list of signs. */
  sign: 8,
  /** The heading of a question. */
  ask: 12,
  /** One line over a screen of signs. */
  sweep: 26,
  /** How to look. */
  how: 15,
  /** A bead of the string of answers. */
  short: 4
} as const
export type TightPlace = keyof typeof MOST_WORDS

/** The most words in a language: others than English need a third more. */
export const mostWordsAt = (place: TightPlace, tag: string): number =>
  tag === 'en' ? MOST_WORDS[place] : Math.round((MOST_WORDS[place] * 4) / 3)

/** How many words a text has; a number and its unit are one. */
export const countWords = (text: string): number =>
  text
    .replace(/(\d)\s+(?=(?:°F|°C|%|mL|L|g)(?!\p{L}))/gu, '$1')
    .split(/\s+/)
    .filter(word => /[\p{L}\d]/u.test(word)).length

/** The most words that a text may have in a language; null where its place has room enough. */
export function mostWords(namespace: string, key: string, tag: string): number | null {
  const place = placeOf(namespace, key)
  return place === null ? null : mostWordsAt(place, tag)
}

function placeOf(namespace: string, key: string): TightPlace | null {
  if (namespace === 'ui') return /^short\.[^.]+$/.test(key) ? 'short' : null
  const own = namespace === 'observations' ? key : /^observations\.(.*)$/.exec(key)?.[1]
  const [, rest = ''] = /^[^.]+\.(.*)$/.exec(own ?? '') ?? []
  if (rest === 'ask' || rest === 'sweep' || rest === 'how') return rest
  const [, group] = /^(answers|signs)\.[^.]+\.label$/.exec(rest) ?? []
  if (group === undefined) return null
  return group === 'answers' ? 'answer' : 'sign'
}
