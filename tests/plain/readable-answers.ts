import { withValue } from '../../src/diagrams/space.ts'
import { diagramsOf } from '../../src/diagrams/tree-diagrams.ts'
import { readOff } from '../../src/plain/readings.ts'
import { type Answers, isInterval } from '../../src/tree/answers.ts'
import type { Lens } from '../../src/tree/lens.ts'
import { at } from '../../src/tree/must.ts'
import type { Tree } from '../../src/tree/tree.ts'

/** Answers as somebody can read them off: a reading as finely as its instrument shows it. */
export function readable(tree: Tree, answers: Answers): Answers {
  return Object.fromEntries(
    Object.entries(answers).map(([id, answer]) => {
      const measure = tree.observations[id]
      return [
        id,
        isInterval(answer) && measure?.kind === 'measure' ? readOff(measure, answer) : answer
      ]
    })
  )
}

/** Answers that fit one row of the decision table of one side, drawn at random: a way down its diagram. */
export function rowOf(tree: Tree, lens: Lens, rest: Answers, next: () => number): Answers {
  const compiled = diagramsOf(tree)
  const { diagrams, variables } = compiled
  let answers = rest
  for (let vertex = compiled.of(lens); !diagrams.isConstant(vertex); ) {
    const children = diagrams.childrenOf(vertex)
    const value = Math.floor(next() * children.length)
    const variable = at(variables, diagrams.variableOf(vertex))
    answers = withValue(answers, variable, at(variable.values, value))
    vertex = at(children, value)
  }
  return readable(tree, answers)
}
