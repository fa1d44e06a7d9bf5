import type { TreeDiagrams } from '../../diagrams/tree-diagrams.ts'
import { emergencySigns } from '../../tree/emergency.ts'
import { found } from '../found.ts'
import { lensesOf } from '../lenses.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'

/** Every sign of a screen changes some outcome or note, with all else that is told the same. */
export const noIdleSign: Property = {
  id: 'no-idle-sign',
  kind: 'shape',
  needsWalks: true,
  prove(compiled, places) {
    const read = variablesRead(compiled)
    const emergencies = emergencySigns(compiled.tree)
    const isEmergency = (observation: string, sign: string) =>
      emergencies.some(each => each.observation === observation && each.sign === sign)
    const cases = compiled.variables.flatMap(({ observation, sign }, index) => {
      if (sign === undefined) return []
      if (read.has(index) || isEmergency(observation, sign)) return [[]]
      const asked = Object.values(compiled.tree.questions).find(({ asks }) => asks === observation)
      const place = places[`questions/${asked?.id}/${sign}`] ?? places[`questions/${asked?.id}`]
      return [[found('idle-sign', place, { observation, sign })]]
    })
    return standing(this.id, this.kind, cases)
  }
}

/** The coordinates that some side of the outcome depends on: a reduced diagram names no others. */
function variablesRead(compiled: TreeDiagrams): ReadonlySet<number> {
  const { diagrams } = compiled
  const seen = new Set<number>()
  const read = new Set<number>()
  const visit = (vertex: number): void => {
    if (seen.has(vertex) || diagrams.isConstant(vertex)) return
    seen.add(vertex)
    read.add(diagrams.variableOf(vertex))
    for (const child of diagrams.childrenOf(vertex)) visit(child)
  }
  for (const lens of lensesOf(compiled.tree)) visit(compiled.of(lens))
  return read
}
