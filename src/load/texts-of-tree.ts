import type { Tree } from '../tree/tree.ts'

type Texts = Readonly<Record<string, unknown>>

/** Of one language's texts those that a tree can say, by namespace; the screens' own are left out. */
export function textsOf(tree: Tree, words: Texts): Texts {
  const named = namedIn(tree)
  return {
    observations: pick(observationsOf(tree.id, words), new Set(Object.keys(tree.observations))),
    verdicts: pick(words.verdicts, new Set(tree.verdicts.map(({ id }) => id))),
    steps: pick(words.steps, named),
    notes: pick(words.notes, named),
    'follow-ups': pick(words['follow-ups'], named),
    [tree.id]: words[tree.id]
  }
}

/** Of one language the words of all observations, those of one tree in place of the common ones. */
export function observationsOf(tree: string, words: Texts): Texts {
  const own = words[tree] as { readonly observations?: Texts } | undefined
  return own?.observations
    ? over(words.observations as Texts, own.observations)
    : (words.observations as Texts)
}

/** One group of texts over another; what the upper one leaves out is the lower one's. */
function over(lower: Texts, upper: Texts): Texts {
  const groups = Object.entries(upper).map(([key, text]) => {
    const under = lower[key]
    return [key, isGroup(text) && isGroup(under) ? over(under, text) : text]
  })
  return { ...lower, ...Object.fromEntries(groups) }
}

const isGroup = (texts: unknown): texts is Texts => typeof texts === 'object' && texts !== null

/** Every name that a tree uses: its observations, notes, steps, sources. The rules say nothing to anybody. */
export function namedIn(tree: Omit<Tree, 'fingerprint' | 'wordsFingerprint'>): ReadonlySet<string> {
  const names = JSON.stringify({ ...tree, rules: [] }).match(/"[a-z0-9-]+"/g) ?? []
  return new Set(names.map(name => name.slice(1, -1)))
}

/** Of a group of things by name those that are wanted. */
export function pick<T>(all: unknown, wanted: ReadonlySet<string>): Readonly<Record<string, T>> {
  const entries = Object.entries((all ?? {}) as Record<string, T>)
  return Object.fromEntries(entries.filter(([id]) => wanted.has(id)))
}
