/** The keys of all texts in a group, joined by dots. */
export function textKeys(group: unknown, above = ''): readonly string[] {
  if (typeof group === 'string') return [above]
  if (typeof group !== 'object' || group === null) return []
  return Object.entries(group).flatMap(([key, value]) =>
    textKeys(value, above === '' ? key : `${above}.${key}`)
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
  const mine = groupsOf(keys)
  const theirs = groupsOf(others)
  const found: Unmatched[] = []
  for (const [group, names] of mine) {
    const known = theirs.get(group)
    if (!known) continue
    for (const name of names) {
      if (known.has(name)) continue
      const beside = [...known].filter(other => !names.has(other))
      found.push({ key: group === '' ? name : `${group}.${name}`, name, beside })
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
