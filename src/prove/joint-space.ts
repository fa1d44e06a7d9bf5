import { spaceOf, type Value, type Variable } from '../diagrams/space.ts'
import { bandsOf } from '../tree/bands.ts'
import type { Question, Tree } from '../tree/tree.ts'

/** The answers that two editions both know, and those that only one of them does. */
export interface JointSpace {
  readonly variables: readonly Variable[]
  /** Answers and whole observations that only one edition asks about. */
  readonly onlyOld: readonly Named[]
  readonly onlyNew: readonly Named[]
}

/** An observation, or one answer or sign of it. */
export interface Named {
  readonly observation: string
  readonly answer: string | null
}

/**
 * The space in which two editions can be compared: every observation that either asks, in the newer
 * one's order; of a choice the answers that both have; of a measure the limits of both.
 *
 * @throws Error when an observation is of another kind than it was: nothing would be compared.
 */
export function jointSpace(before: Tree, after: Tree): JointSpace {
  const olds = new Map(spaceOf(before).map(variable => [nameOf(variable), variable]))
  const news = spaceOf(after)
  const names = new Set(news.map(nameOf))
  const onlyOld: Named[] = []
  const onlyNew: Named[] = []
  const variables = news.map(variable => {
    const { observation, sign } = variable
    const kinds = [before, after].map(tree => tree.observations[observation]?.kind)
    if (kinds[0] !== undefined && kinds[0] !== kinds[1]) {
      throw new Error(`\`${observation}\` was a ${kinds[0]} and is a ${kinds[1]} now`)
    }
    const old = olds.get(nameOf(variable))
    if (old === undefined) {
      onlyNew.push({ observation, answer: sign ?? null })
      return variable
    }
    if (kinds[1] === 'measure')
      return { ...variable, values: jointBands(before, after, observation) }
    const has = ({ values }: Variable, label: string) => values.some(value => value.label === label)
    const named = ({ label }: Value): Named => ({ observation, answer: sign ?? label })
    onlyNew.push(...variable.values.filter(({ label }) => !has(old, label)).map(named))
    onlyOld.push(...old.values.filter(({ label }) => !has(variable, label)).map(named))
    return { ...variable, values: variable.values.filter(({ label }) => has(old, label)) }
  })
  const gone = [...olds.values()].filter(variable => !names.has(nameOf(variable)))
  onlyOld.push(...gone.map(({ observation, sign }) => ({ observation, answer: sign ?? null })))
  return { variables: [...variables, ...gone], onlyOld, onlyNew }
}

export const nameOf = ({ observation, sign }: Variable): string =>
  sign === undefined ? observation : `${observation} ${sign}`

/** A measure cut by the limits of both editions. */
function jointBands(before: Tree, after: Tree, id: string): readonly Value[] {
  const measure = after.observations[id]
  if (measure?.kind !== 'measure') throw new Error(`${id} is no measure`)
  const renamed: [string, Question][] = Object.values(before.questions).map(question => [
    `before ${question.id}`,
    question
  ])
  const both: Tree = {
    ...after,
    questions: { ...after.questions, ...Object.fromEntries(renamed) },
    rules: [...after.rules, ...before.rules]
  }
  const bands = bandsOf(both, measure).map(({ label, interval }) => ({ label, answer: interval }))
  return [...bands, { label: 'unsure', answer: 'unsure' }]
}
