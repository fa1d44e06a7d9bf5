import type { Tree } from '../tree/tree.ts'

/** One place in a tree that rests on a source. */
export interface Citing {
  readonly kind: 'rule' | 'verdict' | 'note' | 'question'
  readonly id: string
  /** The other sources that it rests on as well. */
  readonly beside: readonly string[]
}

/** Every rule, verdict, note and question of a tree that rests on a source. */
export function citing(tree: Tree, source: string): readonly Citing[] {
  const { rules, questions, advice } = tree
  const all: readonly (readonly [Citing['kind'], string, readonly string[]])[] = [
    ...rules.map(({ id, because }) => ['rule', id, because] as const),
    ...Object.entries(advice.verdicts).map(
      ([id, { because }]) => ['verdict', id, because] as const
    ),
    ...Object.entries(advice.notes).map(([id, { because }]) => ['note', id, because] as const),
    ...Object.values(questions).map(({ id, because }) => ['question', id, because] as const)
  ]
  return all
    .filter(([, , because]) => because.includes(source))
    .map(([kind, id, because]) => ({ kind, id, beside: because.filter(one => one !== source) }))
}
