import { isGroup } from '../../tree/group.ts'
import { kindOf, type TextKind } from '../../words/kinds.ts'

/** One text of a tree, where it stands and what it is for. */
export interface SpokenText {
  readonly namespace: string
  readonly key: string
  readonly text: string
  readonly kind: TextKind
}

/** Every text in some namespaces, in the order of the files; the key that names a schema is no text. */
export function spokenTexts(texts: Readonly<Record<string, unknown>>): readonly SpokenText[] {
  return Object.entries(texts).flatMap(([namespace, group]) =>
    leavesOf(group).map(([key, text]) => ({ namespace, key, text, kind: kindOf(namespace, key) }))
  )
}

function leavesOf(
  group: unknown,
  keys: readonly string[] = []
): readonly (readonly [string, string])[] {
  if (typeof group === 'string') return keys[0] === '$schema' ? [] : [[keys.join('.'), group]]
  if (!isGroup(group)) return []
  return Object.entries(group).flatMap(([key, inner]) => leavesOf(inner, [...keys, key]))
}
