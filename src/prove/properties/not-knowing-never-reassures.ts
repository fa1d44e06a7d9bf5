import { isInterval } from '../../tree/answers.ts'
import { holdsAll } from '../../tree/range.ts'
import type { Value, Variable } from '../../tree/space.ts'
import type { Tree } from '../../tree/tree.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'
import { answersTo, ofAnswer } from '../unsure.ts'

/**
 * With all other answers equal: where some answer to an observation withholds `as-directed`, so does
 * unsure, and so does a borderline measurement. Counted by such answers.
 */
export const notKnowingNeverReassures: Property = {
  id: 'not-knowing-never-reassures',
  kind: 'law',
  needsWalks: true,
  prove(made, places) {
    const { diagrams, tree } = made
    const use = made.of('use')
    const cases = made.variables.flatMap((variable, index) => {
      const each = variable.values.map((_, value) => diagrams.restrict(use, index, value))
      const most = each.reduce((a, b) => diagrams.join(a, b), diagrams.constant(0))
      return variable.values.flatMap((value, at) => {
        if (!countsAsUnsure(tree, variable, value)) return []
        const reassures = diagrams.combine([each[at] as number, most], ([here, some]) =>
          here === 0 && (some as number) > 0 ? 1 : 0
        )
        const answers = answersTo(made, reassures, level => level === 1, index, at)
        if (answers === undefined) return [[]]
        return [[ofAnswer('unsure-reassures', made, variable, value.label, places, answers, {})]]
      })
    })
    return standing(this.id, this.kind, cases)
  }
}

/** A borderline measurement, which no range of some question holds, counts as unsure. */
function countsAsUnsure(tree: Tree, variable: Variable, { answer }: Value): boolean {
  if (answer === 'unsure') return true
  if (!isInterval(answer)) return false
  return Object.values(tree.questions).some(
    question =>
      question.kind === 'measure' &&
      question.asks === variable.observation &&
      !question.ranges.some(({ range }) => holdsAll(range, answer))
  )
}
