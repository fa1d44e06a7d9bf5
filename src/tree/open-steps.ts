import { allowedValues } from './allowed.ts'
import type { Answers } from './answers.ts'
import { reachable } from './reach.ts'
import type { Tree } from './tree.ts'
import { diagramsOf } from './tree-diagrams.ts'

/**
 * The notes of which it is not known yet whether they will be said, and that would change what to do or
 * whom to call: an outcome told before is right in its verdicts, and could lack a step.
 */
export function openSteps(tree: Tree, answers: Answers): readonly string[] {
  const made = diagramsOf(tree)
  const open = made.variables.map(variable => allowedValues(tree, variable, answers))
  return Object.entries(tree.advice.notes)
    .filter(([, { adds, drops, clean, refer }]) =>
      [adds, drops, clean, refer].some(steps => steps.length > 0)
    )
    .map(([note]) => note)
    .filter(note => reachable(made.diagrams, made.of({ note }), open).size > 1)
}
