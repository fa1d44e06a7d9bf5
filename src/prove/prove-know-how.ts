import { diagramsOf } from '../diagrams/tree-diagrams.ts'
import type { Places } from '../findings/place.ts'
import type { Rule, Tree } from '../tree/tree.ts'
import { proveRule } from './prove-rule.ts'
import { type Proved, standing } from './proved.ts'

/**
 * No answer to a how-to question is looser than the tree: where it allows the food, so does the tree, for
 * every complete set of answers in which all else looks ordinary. Null where no answer allows any of it.
 */
export function proveKnowHow(
  tree: Tree,
  allowed: readonly Rule[] = [],
  places: Places = {}
): Proved | null {
  if (allowed.length === 0) return null
  // Their limits have to cut the answer space as those of the tree's own rules do.
  const compiled = diagramsOf({ ...tree, rules: [...tree.rules, ...allowed] })
  const cases = allowed.map(rule => proveRule(compiled, rule, places).findings)
  return standing('know-how-is-no-looser', 'rule', cases)
}
