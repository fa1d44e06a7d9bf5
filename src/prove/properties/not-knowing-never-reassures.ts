import type { Value, Variable } from '../../diagrams/space.ts'
import { isInterval } from '../../tree/answers.ts'
import { must } from '../../tree/must.ts'
import { holdsAll } from '../../tree/range.ts'
import type { Tree } from '../../tree/tree.ts'
import { passing } from '../lenses.ts'
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
  prove(compiled, places) {
    const { diagrams, tree } = compiled
    // Whether anything is withheld, and no more of it: how strictly is nothing to this law.
    const withheld = diagrams.combine([compiled.of('use')], ([use]) => (use === 0 ? 0 : 1))
    const cases = compiled.variables.flatMap((variable, index) => {
      const each = variable.values.map((_, value) => diagrams.restrict(withheld, index, value))
      const most = each.reduce((a, b) => diagrams.join(a, b), diagrams.constant(0))
      return variable.values.flatMap((value, place) => {
        const doubting = doubtingQuestions(tree, variable, value)
        if (doubting === undefined) return []
        // In doubt only where the walk passes a question whose ranges do not hold the reading.
        const passed = doubting.map(question =>
          diagrams.restrict(passing(compiled, question), index, place)
        )
        const reassures = diagrams.combine(
          [must(each[place], 'diagram'), most, ...passed],
          levels => {
            const [here, some, ...through] = levels
            const inDoubt = doubting.length === 0 || through.some(level => level === 1)
            return here === 0 && must(some, 'level') > 0 && inDoubt ? 1 : 0
          }
        )
        const answers = answersTo(compiled, reassures, level => level === 1, index, place)
        if (answers === undefined) return [[]]
        return [
          [ofAnswer('unsure-reassures', compiled, variable, value.label, places, answers, {})]
        ]
      })
    })
    return standing(this.id, this.kind, cases)
  }
}

/** None for `unsure` itself, which counts everywhere; the questions none of whose ranges hold a reading. */
function doubtingQuestions(
  tree: Tree,
  variable: Variable,
  { answer }: Value
): readonly string[] | undefined {
  if (answer === 'unsure') return []
  if (!isInterval(answer)) return undefined
  const doubting = Object.values(tree.questions).filter(
    question =>
      question.kind === 'measure' &&
      question.asks === variable.observation &&
      !question.ranges.some(({ range }) => holdsAll(range, answer))
  )
  return doubting.length === 0 ? undefined : doubting.map(({ id }) => id)
}
