import { allowedValues, openValues } from '../diagrams/allowed.ts'
import { reachable } from '../diagrams/reach.ts'
import type { Variable } from '../diagrams/space.ts'
import type { TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import { type Answer, type Answers, signsOf, signValueOf } from '../tree/answers.ts'
import { settlersOf } from '../tree/linked.ts'
import type { Tree } from '../tree/tree.ts'

/** Things told of one observation, or of one sign of it, of which only one can be so. */
export interface Either {
  readonly observation: string
  readonly sign: string | null
  /** The first is the one that counts where one alone has to. */
  readonly answers: readonly Answer[]
}

/** The answers with one of several told things taken for true. */
export function taking(answers: Answers, { observation, sign }: Either, answer: Answer): Answers {
  if (sign === null) return { ...answers, [observation]: answer }
  const signs = { ...signsOf(answers, observation), [sign]: signValueOf(answer) }
  return { ...answers, [observation]: signs }
}

/** The answers with each of the told things taken for true in turn, the rest as it counts. */
export const variations = (answers: Answers, either: readonly Either[]): readonly Answers[] =>
  either.flatMap(one => one.answers.slice(1).map(answer => taking(answers, one, answer)))

/**
 * The levels that a side of the outcome can still have. Where several things were told of which one
 * can be so, the highest level counts over all of them together, without trying each combination.
 */
export function levelsOf(
  compiled: TreeDiagrams,
  diagram: number,
  answers: Answers,
  either: readonly Either[]
): readonly number[] {
  const open = openValues(compiled.tree, compiled.variables, answers)
  // INVARIANT: a higher level is never less cautious, so the highest stands for all that could be so.
  const levels = new Set<number>()
  for (const over of scenarios(compiled, answers, either)) {
    const highest = over.size === 0 ? diagram : compiled.diagrams.highestOver(diagram, over)
    for (const level of reachable(compiled.diagrams, highest, open)) levels.add(level)
  }
  return [...levels].sort((a, b) => a - b)
}

/** The levels that a side can still have, whichever of the told things is so: each for itself. */
export function levelsOfAll(
  compiled: TreeDiagrams,
  diagram: number,
  answers: Answers,
  either: readonly Either[]
): readonly number[] {
  const open = openValues(compiled.tree, compiled.variables, answers)
  const levels = scenarios(compiled, answers, either).flatMap(over => [
    ...reachable(
      compiled.diagrams,
      diagram,
      open.map((mask, index) => over.get(index) ?? mask)
    )
  ])
  return [...new Set(levels)].sort((a, b) => a - b)
}

type Over = ReadonlyMap<number, readonly boolean[]>

/**
 * For each variable that several told things speak of the values that they open together; once for
 * each way in which an observation that settles one of them can still be answered.
 */
function scenarios(
  { tree, variables }: TreeDiagrams,
  answers: Answers,
  either: readonly Either[]
): readonly Over[] {
  let all: readonly Over[] = [new Map()]
  variables.forEach((variable, index) => {
    const concerned = either.filter(one => speaksOf(tree, variable, one))
    if (concerned.length === 0) return
    const masks = untoldOf(tree, variable, answers, concerned).map(rest =>
      combinations(rest, concerned)
        .map(each => allowedValues(tree, variable, each))
        .reduce((a, b) => a.map((is, value) => is || b[value] === true))
    )
    all = all.flatMap(over => masks.map(mask => new Map([...over, [index, mask]])))
  })
  return all
}

function speaksOf(tree: Tree, { observation, sign }: Variable, one: Either): boolean {
  if (one.observation === observation) return (one.sign ?? undefined) === sign
  return settlersOf(tree, observation).some(({ id }) => id === one.observation)
}

/** The answers with everything told that bears on a variable: of what is untold, each way. */
function untoldOf(
  tree: Tree,
  { observation: id }: Variable,
  answers: Answers,
  concerned: readonly Either[]
): readonly Answers[] {
  const observation = tree.observations[id]
  if (observation?.kind !== 'choice') return [answers]
  return [observation, ...settlersOf(tree, id)]
    .filter(one => !Object.hasOwn(answers, one.id))
    .filter(one => !concerned.some(({ observation: answer }) => answer === one.id))
    .reduce<readonly Answers[]>(
      (sets, one) =>
        sets.flatMap(set =>
          [...one.answers.map(answer => answer.id), 'unsure'].map(answer => ({
            ...set,
            [one.id]: answer
          }))
        ),
      [answers]
    )
}

function combinations(answers: Answers, either: readonly Either[]): readonly Answers[] {
  return either.reduce<readonly Answers[]>(
    (sets, one) => sets.flatMap(set => one.answers.map(answer => taking(set, one, answer))),
    [answers]
  )
}
