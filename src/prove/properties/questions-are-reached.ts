import { found } from '../found.ts'
import { isReached } from '../one-unusual.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'

/** Every question lies on the walk of some set of answers, not only on a way that no answers take. */
export const questionsAreReached: Property = {
  id: 'questions-are-reached',
  kind: 'shape',
  needsWalks: true,
  prove(compiled, places) {
    const cases = Object.values(compiled.tree.questions).map(({ id, asks }) =>
      isReached(compiled, id)
        ? []
        : [
            found('question-never-reached', places[`questions/${id}`], {
              question: id,
              observation: asks
            })
          ]
    )
    return standing(this.id, this.kind, cases)
  }
}
