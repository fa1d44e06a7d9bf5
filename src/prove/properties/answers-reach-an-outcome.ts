import { found } from '../found.ts'
import { oneUnusual } from '../one-unusual.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'

/** Every answer to anything that the tree asks lies on a walk that comes to an outcome. */
export const answersReachAnOutcome: Property = {
  id: 'answers-reach-an-outcome',
  kind: 'shape',
  needsWalks: true,
  prove(compiled, places) {
    const cases = oneUnusual(compiled).map(({ index, label, walk: { finished, asks } }) => {
      if (finished) return []
      const question = asks?.question ?? compiled.variables[index]?.observation ?? ''
      return [found('leads-nowhere', places[`questions/${question}`], { question, answer: label })]
    })
    return standing(this.id, this.kind, cases)
  }
}
