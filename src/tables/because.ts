import type { Value } from '../diagrams/space.ts'
import type { TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import { walk } from '../evaluate/walk.ts'
import { completed } from '../prove/witness.ts'
import { type Answers, isInterval } from '../tree/answers.ts'
import { decide } from '../tree/decide.ts'
import { type Lens, levelOf } from '../tree/lens.ts'
import { must } from '../tree/must.ts'
import { holds } from '../tree/range.ts'
import type { Tree } from '../tree/tree.ts'
import { type Cell, type Input, MEASURED, outputsOf } from './table.ts'

/** Whether a value of a coordinate fits what a row asks of its inputs. */
export function fits(value: Value, inputs: readonly Input[], cells: readonly Cell[]): boolean {
  const { answer } = value
  return inputs.every((input, i) => {
    const cell = cells[i] ?? null
    if (cell === null) return true
    if (input.kind === 'number') {
      return isInterval(answer) && 'within' in cell && holds(cell.within, answer[input.end])
    }
    return 'among' in cell && cell.among.includes(isInterval(answer) ? MEASURED : String(answer))
  })
}

/**
 * The sources of what decides a row: of every question that gives its level on the plainest walk that
 * fits the row, and of the advice that goes with it. A row that withholds nothing rests on every
 * question that could have.
 */
export function becauseOf(
  compiled: TreeDiagrams,
  lens: Lens,
  level: number,
  fitting: (variable: number) => (value: Value) => boolean
): readonly string[] {
  const { tree, variables } = compiled
  if (level === 0 && lens !== 'use') return []
  const open = variables.map(({ values }, variable) => values.map(fitting(variable)))
  const answers = completed(compiled, new Map(), open)
  const steps = walk(tree, answers).trail.filter(
    ({ question }) => level === 0 || gives(tree, lens, question, answers) === level
  )
  return [...new Set([...steps.flatMap(step => step.because), ...adviceOf(tree, lens, level)])]
}

function gives(tree: Tree, lens: Lens, question: string, answers: Answers): number {
  const branch = decide(tree, must(tree.questions[question], 'question'), answers)?.branch
  if (branch === undefined) return 0
  const { leads } = branch
  return levelOf(tree, lens, branch, 'end' in leads ? leads.end : undefined)
}

/** The sources of the advice on a verdict or a note. */
export function adviceOf(tree: Tree, lens: Lens, level: number): readonly string[] {
  if (lens === 'use' || level === 0) return []
  if (typeof lens === 'object') return tree.advice.notes[lens.note]?.because ?? []
  return tree.advice.verdicts[must(outputsOf(tree, lens)[level], 'output')]?.because ?? []
}
