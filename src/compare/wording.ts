import type { Tree } from '../tree/tree.ts'

/** A tree with everything that is said of it. */
export interface SpokenTree {
  readonly tree: Tree
  /** By language tag, then by namespace. */
  readonly texts: Readonly<Record<string, Readonly<Record<string, unknown>>>>
  readonly sources: Readonly<Record<string, unknown>>
}

/** A text, a source or a part of the advice that is not what it was; null where it was not there. */
export interface Reworded {
  /** Where it stands: `es steps:bag-it`, `source fsis-molds`, `note warm-room`. */
  readonly at: string
  readonly before: string | null
  readonly after: string | null
}

/** What is said otherwise than before, though it may mean the same: texts, sources, notes and steps. */
export function reworded(before: SpokenTree, after: SpokenTree): readonly Reworded[] {
  return [
    ...changed('', spoken(before), spoken(after)),
    ...changed('source ', before.sources, after.sources),
    ...changed('note ', before.tree.advice.notes, after.tree.advice.notes),
    ...changed('steps of ', before.tree.advice.verdicts, after.tree.advice.verdicts)
  ]
}

/** Every text by `language namespace:key`. */
function spoken({ texts }: SpokenTree): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    Object.entries(texts).flatMap(([tag, spaces]) =>
      Object.entries(spaces).flatMap(([space, group]) =>
        leaves(group).map(([key, text]) => [`${tag} ${space}:${key}`, text] as const)
      )
    )
  )
}

function leaves(
  group: unknown,
  keys: readonly string[] = []
): readonly (readonly [string, unknown])[] {
  if (typeof group !== 'object' || group === null) return [[keys.join('.'), group]]
  return Object.entries(group).flatMap(([key, value]) => leaves(value, [...keys, key]))
}

function changed(
  kind: string,
  before: Readonly<Record<string, unknown>>,
  after: Readonly<Record<string, unknown>>
): readonly Reworded[] {
  const keys = [...new Set([...Object.keys(before), ...Object.keys(after)])].sort()
  return keys.flatMap(key => {
    const [was, is] = [textOf(before[key]), textOf(after[key])]
    return was === is ? [] : [{ at: `${kind}${key}`, before: was, after: is }]
  })
}

const textOf = (value: unknown): string | null =>
  value === undefined ? null : typeof value === 'string' ? value : JSON.stringify(value)
