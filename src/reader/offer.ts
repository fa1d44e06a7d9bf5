import type { Tree } from '../tree/tree.ts'
import { type Candidate, factKey } from './fact.ts'
import { isDangerFact } from './worry.ts'

/** No more can be picked from. */
export const MOST_CANDIDATES = 8

/**
 * Each fact once: what is sure first, then danger signs that were said, then all else that was said, then
 * what is only hinted at, of which no more than can be picked from.
 */
export function offerOf(
  tree: Tree,
  clear: readonly Candidate[],
  more: readonly Candidate[]
): readonly Candidate[] {
  const open = clear.filter(({ sure }) => !sure)
  const grave = (candidate: Candidate) => isDangerFact(tree, candidate)
  const ordered: readonly Candidate[] = [
    ...clear.filter(({ sure }) => sure),
    ...open.filter(grave),
    ...open,
    ...more
  ]
  const said = new Set(clear.map(factKey))
  const all = new Map<string, Candidate>()
  for (const candidate of ordered) {
    const key = factKey(candidate)
    if (all.has(key) || (!said.has(key) && all.size >= MOST_CANDIDATES)) continue
    const { observation, answer, matched, sure } = candidate
    all.set(key, { observation, answer, matched, sure })
  }
  return [...all.values()]
}
