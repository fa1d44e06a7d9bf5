import type { Value, Variable } from '../../diagrams/space.ts'
import type { Answers } from '../../tree/answers.ts'
import { must } from '../../tree/must.ts'
import { everything, isUsual } from '../open.ts'
import { completed, shortestTo, type ValueChoice } from '../witness.ts'
import type { SaidDiagrams } from './said.ts'

/** An answer that is enough to break a law where the rest is as usual as can be. */
export interface Breaking {
  /** `jar-signs mold-removed unsure`, `jar-ph over 4.2`: how an author names it as open. */
  readonly answer: string
  readonly answers: Answers
}

const MOST = 40

/**
 * Where a diagram is 1, by the answers that decide it: each with the set of fewest unusual answers that
 * shows it, until no set is left.
 */
export function byAnswer(
  { compiled, occasion: { facts } }: SaidDiagrams,
  where: number
): readonly Breaking[] {
  const found: Breaking[] = []
  const open = everything(compiled)
  for (let left = where; found.length < MOST; ) {
    const choice = shortestTo(compiled, left, open, level => level === 1)
    if (choice === undefined) break
    const decisive = decidingIn(compiled, left, choice)
    found.push({
      answer: decisive === undefined ? 'usual' : nameOf(decisive.variable, decisive.value),
      answers: completed(compiled, choice, open)
    })
    if (decisive === undefined) break
    const { index, at } = decisive
    const size = decisive.variable.values.length
    const levels = Array.from({ length: size }, (_, value) => (value === at ? 1 : 0))
    left = facts.without(left, compiled.diagrams.select(index, levels))
  }
  return found
}

interface Deciding {
  readonly index: number
  readonly at: number
  readonly variable: Variable
  readonly value: Value
}

/** The answer of a choice without which, all else equal, it would not be so; else its first unusual one. */
function decidingIn(
  compiled: SaidDiagrams['compiled'],
  where: number,
  choice: ValueChoice
): Deciding | undefined {
  const unusual = [...choice].flatMap(([index, chosen]): Deciding[] => {
    const variable = must(compiled.variables[index], 'variable')
    const value = must(variable.values[chosen], 'value')
    return isUsual(compiled.tree, variable, value) ? [] : [{ index, at: chosen, variable, value }]
  })
  const decides = ({ index, variable }: Deciding) => {
    const usual = variable.values.findIndex(value => isUsual(compiled.tree, variable, value))
    return usual >= 0 && levelAt(compiled, where, new Map([...choice, [index, usual]])) === 0
  }
  return unusual.findLast(decides) ?? unusual.at(-1)
}

/** The level of a diagram for a choice; a value that the choice leaves open is the usual one. */
function levelAt(
  { diagrams, variables, tree }: SaidDiagrams['compiled'],
  where: number,
  choice: ValueChoice
): number {
  let vertex = where
  while (!diagrams.isConstant(vertex)) {
    const index = diagrams.variableOf(vertex)
    const variable = must(variables[index], 'variable')
    const usual = variable.values.findIndex(value => isUsual(tree, variable, value))
    const value = choice.get(index) ?? Math.max(usual, 0)
    vertex = must(diagrams.childrenOf(vertex)[value], 'child')
  }
  return vertex
}

const nameOf = ({ observation, sign }: Variable, { label }: Value): string =>
  [observation, sign, label].filter(part => part !== undefined).join(' ')
