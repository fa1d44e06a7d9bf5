/** Every text in a group, by its key: the names above it and its own, joined by dots. */
export function textsIn(group: unknown, above = ''): ReadonlyMap<string, string> {
  if (typeof group === 'string') return new Map([[above, group]])
  if (typeof group !== 'object' || group === null) return new Map()
  return new Map(
    Object.entries(group).flatMap(([key, value]) => [
      ...textsIn(value, above === '' ? key : `${above}.${key}`)
    ])
  )
}

/** A part that one set of keys has and another has not, with the name its neighbours there go by. */
export interface Unmatched {
  readonly key: string
  /** Its last name, and the names beside it that the other set has and this one has not. */
  readonly name: string
  readonly beside: readonly string[]
}

/** The topmost parts of `keys` that `others` know nothing of, each once. */
export function unmatched(keys: Iterable<string>, others: Iterable<string>): readonly Unmatched[] {
  const texts = new Set(keys)
  const otherTexts = new Set(others)
  const mine = groupsOf(texts)
  const theirs = groupsOf(otherTexts)
  const found: Unmatched[] = []
  for (const [group, names] of mine) {
    const before = theirs.get(group)
    if (!before) continue
    for (const name of names) {
      const key = group === '' ? name : `${group}.${name}`
      // A text where the other set has a group of texts is not the same part.
      if (before.has(name) && texts.has(key) === otherTexts.has(key)) continue
      const beside = [...before].filter(other => !names.has(other))
      found.push({ key, name, beside })
    }
  }
  return found
}

/** By group, the names that stand in it. */
function groupsOf(keys: Iterable<string>): ReadonlyMap<string, ReadonlySet<string>> {
  const groups = new Map<string, Set<string>>([['', new Set()]])
  for (const key of keys) {
    const names = key.split('.')
    for (const [index, name] of names.entries()) {
      const group = names.slice(0, index).join('.')
      const inside = groups.get(group) ?? new Set()
      groups.set(group, inside.add(name))
    }
  }
  return groups
}
