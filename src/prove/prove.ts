import type { Places } from '../findings/place.ts'
import type { Tree } from '../tree/tree.ts'
import { diagramsOf } from '../tree/tree-diagrams.ts'
import { proveRule } from './prove-rule.ts'
import { proveUnsure } from './prove-unsure.ts'
import type { Proved } from './proved.ts'

/** Proves every rule of a tree, and that not knowing never reassures, over its whole answer space. */
export function prove(tree: Tree, places: Places = {}): readonly Proved[] {
  const made = diagramsOf(tree)
  return [...tree.rules.map(rule => proveRule(made, rule, places)), ...proveUnsure(made, places)]
}

/** How many complete sets of answers the proofs are about. They count sets of answers, not callers. */
export function answerSets(tree: Tree): bigint {
  return diagramsOf(tree).variables.reduce((n, { values }) => n * BigInt(values.length), 1n)
}
