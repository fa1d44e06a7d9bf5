import type { Open } from '../diagrams/reach.ts'
import { type Value, withValue } from '../diagrams/space.ts'
import type { TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import { walk } from '../evaluate/walk.ts'
import type { Witness } from '../findings/finding.ts'
import { type Answers, isInterval } from '../tree/answers.ts'
import { must } from '../tree/must.ts'
import type { Tree } from '../tree/tree.ts'
import { isUsual } from './open.ts'

/** A choice of value for some of the coordinates, by index. */
export type ValueChoice = ReadonlyMap<number, number>

/**
 * The way through a diagram to a level that is asked for which takes the fewest unusual answers,
 * by open values only; undefined when there is none.
 */
export function shortestTo(
  compiled: TreeDiagrams,
  diagram: number,
  open: Open,
  wanted: (level: number) => boolean
): ValueChoice | undefined {
  const { diagrams } = compiled
  const forced = forcedBefore(compiled, open)
  const best = new Map<number, { cost: number; value: number } | null>()
  // INVARIANT: children ask later variables than their parents: the search ends, each vertex is costed once.
  const visit = (vertex: number): number => {
    if (diagrams.isConstant(vertex)) return wanted(vertex) ? 0 : Number.POSITIVE_INFINITY
    const before = best.get(vertex)
    if (before !== undefined) return before?.cost ?? Number.POSITIVE_INFINITY
    const index = diagrams.variableOf(vertex)
    let found: { cost: number; value: number } | null = null
    for (const [value, child] of diagrams.childrenOf(vertex).entries()) {
      if (!open[index]?.[value]) continue
      const skipped = (forced[diagrams.variableOf(child)] ?? 0) - (forced[index + 1] ?? 0)
      const cost = visit(child) + costOf(compiled, index, value) + skipped
      if (cost < (found?.cost ?? Number.POSITIVE_INFINITY)) found = { cost, value }
    }
    best.set(vertex, found)
    return found?.cost ?? Number.POSITIVE_INFINITY
  }
  if (visit(diagram) === Number.POSITIVE_INFINITY) return undefined
  const choice = new Map<number, number>()
  for (let index = diagram; !diagrams.isConstant(index); ) {
    const value = must(best.get(index), 'way').value
    choice.set(diagrams.variableOf(index), value)
    index = must(diagrams.childrenOf(index)[value], 'child')
  }
  return choice
}

/** For each place in the order how many coordinates before it have nothing usual left open. */
function forcedBefore(compiled: TreeDiagrams, open: Open): readonly number[] {
  const sums = [0]
  compiled.variables.forEach((variable, index) => {
    const usual = variable.values.some(
      (value, place) => open[index]?.[place] && isUsual(compiled.tree, variable, value)
    )
    sums.push(must(sums[index], 'sum') + (usual ? 0 : 1))
  })
  return sums
}

function costOf(compiled: TreeDiagrams, index: number, value: number): number {
  const variable = must(compiled.variables[index], 'variable')
  const chosen = variable.values[value]
  return chosen && isUsual(compiled.tree, variable, chosen) ? 0 : 1
}

/** A complete set of answers that makes the choice; the rest usual where that is open. */
export function completed(compiled: TreeDiagrams, choice: ValueChoice, open: Open): Answers {
  const values = valuesOf(compiled, choice, open)
  const answers = compiled.variables.reduce<Answers>((so, variable, index) => {
    const value = values[index]
    return value === undefined ? so : withValue(so, variable, value)
  }, {})
  return { ...answers, ...settlersUnsure(compiled.tree) }
}

/** How many unusual answers that set has. */
export function unusualIn(compiled: TreeDiagrams, choice: ValueChoice, open: Open): number {
  const values = valuesOf(compiled, choice, open)
  return compiled.variables.filter((variable, index) => {
    const value = values[index]
    return value !== undefined && !isUsual(compiled.tree, variable, value)
  }).length
}

function valuesOf(
  compiled: TreeDiagrams,
  choice: ValueChoice,
  open: Open
): readonly (Value | undefined)[] {
  return compiled.variables.map((variable, index) => {
    const chosen = choice.get(index)
    if (chosen !== undefined) return variable.values[chosen]
    const allowed = variable.values.filter((_, value) => open[index]?.[value])
    return allowed.find(one => isUsual(compiled.tree, variable, one)) ?? allowed[0]
  })
}

/** Settling observations are no coordinates: unsure leaves the settled answer as it is. */
function settlersUnsure(tree: Tree): Answers {
  const settlers = Object.values(tree.observations).filter(
    observation => observation.kind === 'choice' && observation.settles !== undefined
  )
  return Object.fromEntries(settlers.map(({ id }) => [id, 'unsure']))
}

/** The walk that a set of answers takes, as an author reads it: each thing asked once. */
export function witnessOf(tree: Tree, answers: Answers): Witness {
  return walk(tree, answers)
    .trail.filter(step => !step.again)
    .map(({ observation, answer }) => ({ observation, answer: shown(answer) }))
}

function shown(answer: Answers[string] | undefined): string {
  if (answer === undefined || typeof answer === 'string') return answer ?? 'not told'
  if (isInterval(answer)) {
    return answer.low === answer.high ? `${answer.reading}` : `${answer.low} to ${answer.high}`
  }
  const signs = Object.entries(answer).filter(([, value]) => value !== 'no')
  if (signs.length === 0) return 'none'
  return signs.map(([sign, value]) => (value === 'yes' ? sign : `${sign} unsure`)).join(' + ')
}
