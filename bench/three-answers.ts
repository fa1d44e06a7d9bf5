import type { Tree } from '../src/tree/tree.ts'
import { rule, type Sketch, sketch } from '../tests/helpers/sketch.ts'

/** So many questions in a row, each with three answers; every answer leads on, and the first of all decides. */
export function threeAnswers(count: number): Tree {
  const questions: Record<string, Sketch[string]> = {}
  const usual: Record<string, string> = {}
  for (let index = 0; index < count; index++) {
    const leads = index + 1 < count ? `→ q${index + 1}` : '= normal-growth'
    questions[`q${index}`] = {
      '!dry': `+likely-mold ${leads}`,
      wet: leads,
      unsure: `+wait-and-recheck ${leads}`
    }
    usual[`q${index}`] = 'wet'
  }
  const choice = (observation: string, answer: string) =>
    ({ kind: 'choice', observation, among: [answer] }) as const
  const rules = Array.from({ length: count }, (_, index) => [
    rule(`dry-${index}`, [choice(`q${index}`, 'dry')], {
      kind: 'at-least',
      verdict: 'likely-mold'
    }),
    rule(
      `unsure-${index}`,
      [choice(`q${index}`, 'unsure')],
      { kind: 'at-most', verdict: 'wait-and-recheck' },
      { restUsual: true }
    )
  ]).flat()
  return sketch(questions, { usual, rules })
}
