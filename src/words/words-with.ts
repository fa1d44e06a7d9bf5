import { createWords, type Resources, type Words } from './words.ts'

/** A language's words with those that came later: of the keys that `theirs` fits the later ones speak. */
export function wordsWith(words: Words, later: Resources, theirs: RegExp): Words {
  const more = createWords(later, words.tag)
  const by = (key: string) => (theirs.test(key) ? more : words)
  return {
    tag: words.tag,
    t: (key, values) => by(key).t(key, values),
    has: (key, values) => by(key).has(key, values)
  }
}
