import type { CallersWords } from '../tree/callers-words.ts'
import { wordsOf } from './normal.ts'

/**
 * The other trees whose ferment a line names, in the order named. None where it names this tree's own too:
 * what stood beside the jar is not what the call is about.
 */
export function otherTreesIn(
  line: string,
  ferments: CallersWords['ferments'],
  own: string
): readonly string[] {
  const byName = new Map<string, readonly string[]>()
  for (const [tree, names] of Object.entries(ferments)) {
    for (const name of names) {
      const key = wordsOf(name).join(' ')
      byName.set(key, [...(byName.get(key) ?? []), tree])
    }
  }
  const longest = Math.max(0, ...[...byName.keys()].map(name => name.split(' ').length))
  const words = wordsOf(line)
  const named = new Set<string>()
  for (let from = 0; from < words.length; ) {
    let length = Math.min(longest, words.length - from)
    while (length > 0 && !byName.has(words.slice(from, from + length).join(' '))) length--
    for (const tree of byName.get(words.slice(from, from + length).join(' ')) ?? []) named.add(tree)
    // The longest name counts: a kombucha bottle is no jar.
    from += Math.max(1, length)
  }
  return named.has(own) ? [] : [...named]
}
