/** What rules where a directive is not written, nearest first. */
const ABOVE: Readonly<Record<string, readonly string[]>> = {
  'frame-src': ['child-src'],
  'worker-src': ['child-src', 'script-src']
}

type Directives = ReadonlyMap<string, readonly string[]>

/** The directives of one policy by name; of one written twice the first counts, as in browsers. */
export function directivesOf(policy: string): Directives {
  const directives = new Map<string, readonly string[]>()
  for (const part of policy.split(';')) {
    const [name = '', ...sources] = part.trim().split(/\s+/)
    const lower = name.toLowerCase()
    if (lower !== '' && !directives.has(lower)) directives.set(lower, sources)
  }
  return directives
}

/**
 * The directive that lets a policy allow one more source, and all that it allowed before: one that is
 * written replaces `default-src`.
 */
export function lineAllowing(policy: string, refused: string, source: string): string {
  const directives = directivesOf(policy)
  const base = refused.replace(/-(elem|attr)$/, '')
  const written = [refused, base].find(name => directives.has(name))
  const ruling = [...(ABOVE[base] ?? []), 'default-src'].find(name => directives.has(name))
  const before = directives.get(written ?? ruling ?? '') ?? []
  const kept = before.filter(one => one.toLowerCase() !== "'none'" && one !== source)
  return [written ?? base, ...kept, source].join(' ')
}

/** A policy with some directives in place of its own, or after them, and without others. */
export function withLines(
  policy: string,
  lines: readonly string[],
  without: readonly string[] = []
): string {
  const directives = new Map(directivesOf(policy))
  for (const line of lines) {
    const [name = '', ...sources] = line.split(' ')
    directives.set(name, sources)
  }
  return [...directives]
    .filter(([name]) => !without.includes(name))
    .map(([name, sources]) => [name, ...sources].join(' '))
    .join('; ')
}
