/** Words a minute, English, silently and aloud: Brysbaert 2019, doi 10.1016/j.jml.2019.104047. */
export const SILENTLY = 238
export const ALOUD = 183

const segmenters = new Map<string, Intl.Segmenter>()

/** How many words a text has, as a reader of that language counts them: a number is one, a sign is none. */
export function wordsIn(text: string, language: string): number {
  let segmenter = segmenters.get(language)
  if (segmenter === undefined) {
    segmenter = new Intl.Segmenter(language, { granularity: 'word' })
    segmenters.set(language, segmenter)
  }
  let count = 0
  for (const { segment, isWordLike } of segmenter.segment(text)) {
    // A fraction is read like any other number.
    if (isWordLike || /\p{N}/u.test(segment)) count++
  }
  return count
}

/** Minutes to a tenth. */
export const minutes = (words: number, perMinute: number): number =>
  Math.round((10 * words) / perMinute) / 10
