import type { PatternPart, SidePatterns } from '../../src/tables/patterns.ts'
import { type Answers, isInterval, signsOf } from '../../src/tree/answers.ts'
import { bandKey } from '../../src/tree/bands.ts'
import { effectiveChoice } from '../../src/tree/effective.ts'
import type { Tree } from '../../src/tree/tree.ts'

/** Whether answers fit a pattern, read apart from the diagrams that made it. */
export function fitsPattern(tree: Tree, when: readonly PatternPart[], answers: Answers): boolean {
  return when.every(({ observation: id, sign, values }) => {
    const observation = tree.observations[id]
    if (observation === undefined) throw new Error(`no observation ${id}`)
    if (sign !== null) {
      const told = signsOf(answers, id)[sign] ?? 'no'
      return values.some(({ answer }) => answer === told)
    }
    if (observation.kind === 'choice') {
      const told = effectiveChoice(tree, observation, answers)?.answer
      return values.some(({ answer }) => answer === told)
    }
    const told = answers[id]
    if (observation.kind !== 'measure' || !isInterval(told)) {
      return values.some(({ answer }) => answer === 'unsure')
    }
    const key = bandKey(tree, observation, told)
    return values.some(
      ({ answer }) => isInterval(answer) && bandKey(tree, observation, answer) === key
    )
  })
}

/** What a reader of the patterns comes to: the first level of which one fits; the last, where none does. */
export function outputBy(tree: Tree, { levels }: SidePatterns, answers: Answers): string {
  const first = levels.find(({ patterns }) =>
    patterns.some(({ when }) => fitsPattern(tree, when, answers))
  )
  return (first ?? levels.at(-1))?.output ?? 'nothing'
}
