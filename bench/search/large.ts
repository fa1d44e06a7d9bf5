import type { TreeDiagrams } from '../../src/diagrams/tree-diagrams.ts'
import { breachOf } from '../../src/prove/claim.ts'
import { boxesOf } from '../../src/prove/open.ts'
import { proveRule } from '../../src/prove/prove-rule.ts'
import type { Proved } from '../../src/prove/proved.ts'
import type { Rule } from '../../src/tree/tree.ts'
import { Search } from './search.ts'

/** From so many questions on a tree is searched first: its diagrams may not fit in memory. */
export const LARGE = 100

const cache = new WeakMap<TreeDiagrams, Search>()

/** The search of a tree, laid out once. */
export function searchOf(diagrams: TreeDiagrams): Search {
  const before = cache.get(diagrams) ?? new Search(diagrams)
  cache.set(diagrams, before)
  return before
}

/** The trees whose diagrams were asked once: they answer sooner than a search from then on. */
const asked = new WeakSet<TreeDiagrams>()

/**
 * How a rule of a generated tree stands: a large one is searched, and its diagrams are asked where that
 * is too much. Such a tree has no emergency, of which `proveRule` alone knows.
 */
export function standingOf(diagrams: TreeDiagrams, rule: Rule): Proved['standing'] {
  const isLarge = Object.keys(diagrams.tree.questions).length >= LARGE
  const boxes = boxesOf(diagrams, rule)
  if (isLarge && boxes.length > 0 && !asked.has(diagrams)) {
    const breach = breachOf(diagrams.tree, rule.claim)
    const found = boxes.map(box => searchOf(diagrams).breaking(breach, box).kind)
    if (!found.includes('too-much')) return found.includes('breach') ? 'refuted' : 'proved'
    asked.add(diagrams)
  }
  return proveRule(diagrams, rule, {}).standing
}
