import type { TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import { effectsOf } from '../tree/effects.ts'
import type { Lens } from '../tree/lens.ts'
import { must } from '../tree/must.ts'
import { TRACKS } from '../tree/observation.ts'
import { type Tree, USES } from '../tree/tree.ts'

/** What became of an outcome, gravest first where several sides changed. */
export const CHANGES = ['same', 'sideways', 'more-cautious', 'less-cautious'] as const
export type Change = (typeof CHANGES)[number]

const SAME = 0
const SIDEWAYS = 1
const MORE = 2
const LESS = 3

/** Two editions over one space with shared diagrams. */
export interface Pair {
  readonly before: TreeDiagrams
  readonly after: TreeDiagrams
}

/**
 * A diagram over every set of answers: 0 where the outcome is the same, else what kind of change it is.
 * A change is less cautious when any track or the use is gentler, whatever else is stricter.
 */
export function changeDiagram({ before, after }: Pair): number {
  const { diagrams } = after
  const sides: readonly Lens[] = [...TRACKS, 'use']
  let all = SAME
  for (const side of sides) {
    const rank = ranking(before.tree, after.tree, side)
    const changed = diagrams.combine([before.of(side), after.of(side)], ([was, is]) => {
      const difference = rank.after(must(is, 'level')) - rank.before(must(was, 'level'))
      return difference === 0 ? SAME : difference < 0 ? LESS : MORE
    })
    all = diagrams.join(all, changed)
  }
  const notes = new Set([...notesOf(before.tree), ...notesOf(after.tree)])
  for (const note of notes) {
    const changed = diagrams.combine([before.of({ note }), after.of({ note })], ([was, is]) =>
      was === is ? SAME : SIDEWAYS
    )
    all = diagrams.join(all, changed)
  }
  return all
}

/** Every note that some answer of the tree adds. */
export const notesOf = (tree: Tree): readonly string[] => [
  ...new Set(
    Object.values(tree.questions)
      .flatMap(effectsOf)
      .flatMap(({ notes }) => notes)
  )
]

/** How cautious a level of one edition is on a scale that both share. */
export function ranking(before: Tree, after: Tree, lens: Lens) {
  if (typeof lens === 'object' || lens === 'use') return { before: same, after: same }
  const verdicts = (tree: Tree) =>
    tree.verdicts.filter(({ track }) => track === lens).map(({ id }) => id)
  const scale = merged(verdicts(before), verdicts(after))
  const rank = (tree: Tree) => (level: number) =>
    level === 0 ? 0 : scale.indexOf(verdicts(tree)[level - 1] ?? '') + 1
  return { before: rank(before), after: rank(after) }
}

const same = (level: number): number => level

/** Both lists as one, gentlest first; what only the older one has stands behind what it stood behind. */
function merged(before: readonly string[], after: readonly string[]): readonly string[] {
  const all = [...after]
  before.forEach((id, index) => {
    if (all.includes(id)) return
    all.splice(all.indexOf(before[index - 1] ?? '') + 1, 0, id)
  })
  return all
}

/** A level as an author knows it; null for nothing there. */
export function named(tree: Tree, lens: Lens, level: number): string | null {
  if (typeof lens === 'object') return level === 0 ? null : lens.note
  if (lens === 'use') return USES[level] ?? null
  return tree.verdicts.filter(({ track }) => track === lens)[level - 1]?.id ?? null
}
