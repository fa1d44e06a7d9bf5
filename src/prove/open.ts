import type { Open } from '../diagrams/reach.ts'
import type { Value, Variable } from '../diagrams/space.ts'
import type { TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import { isInterval } from '../tree/answers.ts'
import { rank } from '../tree/effective.ts'
import { must, observationOf } from '../tree/must.ts'
import type { ChoiceObservation } from '../tree/observation.ts'
import { holdsAll } from '../tree/range.ts'
import type { Condition, Rule, Tree } from '../tree/tree.ts'

/** One literal on the coordinates: which values of which one it leaves. */
interface Literal {
  readonly index: number
  readonly open: readonly boolean[]
}

/** The condition as a literal, or undefined when the tree has no such coordinate. */
export function literalOf(compiled: TreeDiagrams, condition: Condition): Literal | undefined {
  const observation = compiled.tree.observations[condition.observation]
  if (observation?.kind === 'choice' && observation.settles !== undefined) {
    return settlingLiteral(compiled, condition, observation)
  }
  const index = compiled.indexOf(
    condition.observation,
    condition.kind === 'sign' ? condition.sign : undefined
  )
  if (index === undefined) return undefined
  const { values } = must(compiled.variables[index], 'variable')
  return { index, open: values.map(value => meets(condition, value)) }
}

/** Whether a value meets a condition; a measure's only with its whole interval. */
function meets(condition: Condition, { answer }: Value): boolean {
  if (condition.kind !== 'measure') return condition.among.some(one => one === answer)
  if (condition.is === 'unsure' || answer === 'unsure') return condition.is === answer
  const interval = must(isInterval(answer) ? answer : null, 'reading')
  return 'within' in condition.is
    ? holdsAll(condition.is.within, interval)
    : interval.low <= condition.is.straddles && condition.is.straddles < interval.high
}

/** A settling answer leaves what it stands for and everything more worrying; unsure leaves all. */
function settlingLiteral(
  compiled: TreeDiagrams,
  condition: Condition,
  settler: ChoiceObservation
): Literal | undefined {
  const settled = observationOf(compiled.tree.observations, settler.settles ?? '', 'choice')
  const index = compiled.indexOf(settled.id)
  if (index === undefined || condition.kind !== 'choice') return undefined
  const limits = condition.among.map(answer => {
    const stands = settler.answers.find(({ id }) => id === answer)?.standsFor
    return stands === undefined ? Number.POSITIVE_INFINITY : rank(settled, stands)
  })
  const { values } = must(compiled.variables[index], 'variable')
  return {
    index,
    open: values.map(({ answer }) => limits.some(limit => rank(settled, answer) <= limit))
  }
}

/** Everything left open. */
export function everything(compiled: TreeDiagrams): Open {
  return compiled.variables.map(variable => variable.values.map(() => true))
}

/** Where a rule speaks: a union of boxes of the answer space, none of them empty. */
export function boxesOf(
  compiled: TreeDiagrams,
  rule: Pick<Rule, 'when' | 'unless' | 'restUsual'>
): readonly Open[] {
  const named = new Set(rule.when.map(nameOf))
  const start = rule.restUsual ? usualExcept(compiled, named) : everything(compiled)
  let boxes: readonly (Open | undefined)[] = [
    rule.when.reduce<Open | undefined>((box, one) => narrowed(box, literalOf(compiled, one)), start)
  ]
  for (const exception of rule.unless) {
    boxes = boxes.flatMap(box =>
      exception.map(condition => narrowed(box, negated(literalOf(compiled, condition))))
    )
  }
  return boxes
    .filter(box => box !== undefined)
    .filter(box => box.every(open => open.includes(true)))
}

function narrowed(box: Open | undefined, literal: Literal | undefined): Open | undefined {
  if (box === undefined || literal === undefined) return undefined
  return box.map((open, index) =>
    index === literal.index ? open.map((is, value) => is && literal.open[value] === true) : open
  )
}

function negated(literal: Literal | undefined): Literal | undefined {
  return literal && { ...literal, open: literal.open.map(is => !is) }
}

function nameOf(condition: Condition): string {
  return condition.kind === 'sign'
    ? `${condition.observation} ${condition.sign}`
    : condition.observation
}

function usualExcept(compiled: TreeDiagrams, named: ReadonlySet<string>): Open {
  return compiled.variables.map(variable => {
    const name = variable.sign ? `${variable.observation} ${variable.sign}` : variable.observation
    return variable.values.map(value => named.has(name) || isUsual(compiled.tree, variable, value))
  })
}

/** Whether a value is what an ordinary, untroubled jar shows. A measure with no usual range: any reading. */
export function isUsual(tree: Tree, variable: Variable, { answer }: Value): boolean {
  if (variable.sign !== undefined) return answer === 'no'
  const observation = tree.observations[variable.observation]
  if (observation?.kind === 'choice') {
    return observation.answers.some(({ id, usual }) => usual && id === answer)
  }
  if (observation?.kind !== 'measure' || !isInterval(answer)) return false
  return observation.usual === undefined || holdsAll(observation.usual, answer)
}
