import { type Group, groupOf, isGroup } from '../tree/group.ts'
import type { Tree } from '../tree/tree.ts'

/** Of one language's texts those that a tree can say, by namespace; the screens' own are left out. */
export function textsOf(tree: Tree, words: Group): Group {
  const named = namedIn(tree)
  return {
    observations: pick(observationsOf(tree.id, words), new Set(Object.keys(tree.observations))),
    verdicts: pick(groupOf(words.verdicts), new Set(tree.verdicts.map(({ id }) => id))),
    steps: pick(groupOf(words.steps), named),
    notes: pick(groupOf(words.notes), named),
    'follow-ups': pick(groupOf(words['follow-ups']), named),
    [tree.id]: words[tree.id]
  }
}

/** Of one language the words of all observations, those of one tree in place of the common ones. */
export function observationsOf(tree: string, words: Group): Group {
  const { observations } = groupOf(words[tree])
  const common = groupOf(words.observations)
  return isGroup(observations) ? over(common, observations) : common
}

/** One group of texts over another; what the upper one leaves out is the lower one's. */
function over(lower: Group, upper: Group): Group {
  const groups = Object.entries(upper).map(([key, text]) => {
    const under = lower[key]
    return [key, isGroup(text) && isGroup(under) ? over(under, text) : text]
  })
  return { ...lower, ...Object.fromEntries(groups) }
}

/** Every name that a tree uses: its observations, notes, steps, sources. The rules say nothing to anybody. */
export function namedIn(tree: Omit<Tree, 'fingerprint' | 'wordsFingerprint'>): ReadonlySet<string> {
  const names = JSON.stringify({ ...tree, rules: [] }).match(/"[a-z0-9-]+"/g) ?? []
  return new Set(names.map(name => name.slice(1, -1)))
}

/** Of a group of things by name those that are wanted. */
export function pick<T>(
  all: Readonly<Record<string, T>>,
  wanted: ReadonlySet<string>
): Readonly<Record<string, T>> {
  return Object.fromEntries(Object.entries(all).filter(([id]) => wanted.has(id)))
}
