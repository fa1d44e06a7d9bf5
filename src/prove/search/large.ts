import type { Answers } from '../../tree/answers.ts'
import type { Open } from '../../tree/reach.ts'
import type { TreeDiagrams } from '../../tree/tree-diagrams.ts'
import type { Breach } from '../claim.ts'
import { completed, unusualIn } from '../witness.ts'
import { Search } from './search.ts'

/** From so many questions on a tree is searched first: its diagrams may not fit in memory. */
export const LARGE = 100

const made = new WeakMap<TreeDiagrams, Search>()

/** The search of a tree, laid out once. */
export function searchOf(diagrams: TreeDiagrams): Search {
  const known = made.get(diagrams) ?? new Search(diagrams)
  made.set(diagrams, known)
  return known
}

/** What a search of the boxes found: answers that break the claim, or that none do. */
export interface Sought {
  readonly answers: Answers | undefined
}

/**
 * Searches a large tree for the fewest unusual answers that break a claim; undefined: ask its diagrams.
 * Where one side of the outcome was made whole the others fit as well, and answer sooner than a search.
 */
export function soughtIn(
  diagrams: TreeDiagrams,
  breach: Breach,
  boxes: readonly Open[]
): Sought | undefined {
  const isLarge = Object.keys(diagrams.tree.questions).length >= LARGE
  if (!isLarge || diagrams.isMade) return undefined
  const search = searchOf(diagrams)
  let best: { readonly answers: Answers; readonly cost: number } | undefined
  for (const box of boxes) {
    const found = search.breaking(breach, box)
    if (found.kind === 'too-much') return undefined
    if (found.kind === 'none') continue
    const cost = unusualIn(diagrams, found.choice, box)
    if (best === undefined || cost < best.cost) {
      best = { answers: completed(diagrams, found.choice, box), cost }
    }
  }
  return { answers: best?.answers }
}
