import { type Answers, measureOf, signsOf } from '../tree/answers.ts'
import type { Does } from '../tree/does.ts'
import { effectiveChoice } from '../tree/effective.ts'
import { holdsAll } from '../tree/range.ts'
import type { Condition, Tree } from '../tree/tree.ts'

/** Whether the answers rule out something that a step presumes. Nothing told rules nothing out. */
export function isRuledOut(tree: Tree, { presumes = [] }: Does, answers: Answers): boolean {
  return presumes.some(name =>
    (tree.presumptions[name] ?? []).some(all => all.every(each => isMet(tree, each, answers)))
  )
}

/** Whether answers meet a condition; a measure with its whole interval. */
function isMet(tree: Tree, condition: Condition, answers: Answers): boolean {
  const { observation } = condition
  switch (condition.kind) {
    case 'choice': {
      const asked = tree.observations[observation]
      const choice = asked?.kind === 'choice' ? effectiveChoice(tree, asked, answers) : undefined
      return choice !== undefined && condition.among.includes(choice.answer)
    }
    case 'sign': {
      const value = signsOf(answers, observation)[condition.sign]
      return value !== undefined && condition.among.includes(value)
    }
    case 'measure': {
      const reading = measureOf(answers, observation)
      if (reading === undefined || condition.is === 'unsure') return condition.is === reading
      if (reading === 'unsure') return false
      return 'within' in condition.is
        ? holdsAll(condition.is.within, reading)
        : reading.low <= condition.is.straddles && condition.is.straddles < reading.high
    }
  }
}
