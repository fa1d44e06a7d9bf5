import type { Tree } from '../../tree/tree.ts'
import { type Candidate, factKey } from './fact.ts'
import type { Found } from './look-up.ts'
import { isDangerFact } from './worry.ts'

/** No more can be picked from. */
export const MOST_CANDIDATES = 8

/**
 * Each fact once: what is sure first, then danger signs, then all that was said, then what is only
 * looked up, of which no more than can be picked from.
 */
export function offerOf(
  tree: Tree,
  clear: readonly Candidate[],
  more: readonly Found[]
): readonly Candidate[] {
  const grave = (candidate: Candidate) => isDangerFact(tree, candidate)
  const open = clear.filter(({ sure }) => !sure)
  const first = more.filter(found => found.near && grave(found))
  const ordered: readonly (Candidate | Found)[] = [
    ...clear.filter(({ sure }) => sure),
    ...open.filter(grave),
    ...(open.some(grave) ? [] : first),
    ...open,
    ...(open.some(grave) ? first : []),
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
