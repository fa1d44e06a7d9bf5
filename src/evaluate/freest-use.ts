import { diagramsOf } from '../diagrams/tree-diagrams.ts'
import { level, verdict } from '../tree/caution.ts'
import { must } from '../tree/must.ts'
import { type Tree, USES, type Use } from '../tree/tree.ts'

/** The freest use that any set of answers leaves together with a verdict; `never` where none gives it. */
export function freestUse(tree: Tree, id: string): Use {
  const compiled = diagramsOf(tree)
  const { track } = verdict(tree, id)
  const wanted = level(tree, track, id)
  let freest = USES.length - 1
  compiled.diagrams.combine([compiled.of(track), compiled.of('use')], ([reached, use]) => {
    if (reached === wanted) freest = Math.min(freest, must(use, 'use'))
    return 0
  })
  return USES[freest] ?? 'never'
}
