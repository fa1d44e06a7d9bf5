import { shortestCircle, sortedByWalk } from '../../tree/circuit.ts'
import { found } from '../found.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'

/** No walk comes back to a question that it has passed. Counted by questions. */
export const noCircle: Property = {
  id: 'no-circle',
  kind: 'shape',
  needsWalks: false,
  prove({ tree }, places) {
    const questions = new Map(Object.entries(tree.questions))
    const circle = shortestCircle(questions)
    const clear = sortedByWalk(questions).map(() => [])
    if (circle === null) return standing(this.id, this.kind, clear)
    const [first = ''] = circle
    const finding = found('circle', places[`questions/${first}`], { questions: [...circle, first] })
    return standing(this.id, this.kind, [...clear, [finding]])
  }
}
