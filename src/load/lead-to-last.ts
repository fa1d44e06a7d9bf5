import { reachedFrom } from '../tree/circuit.ts'
import type { Branch, Question } from '../tree/tree.ts'

/**
 * Leads every end of a tree through the questions that come last, which end by themselves. A verdict that
 * a walk would have ended with is raised on the way: of two on one track the more cautious stands anyway.
 */
export function leadToLast(
  questions: ReadonlyMap<string, Question>,
  last: string
): ReadonlyMap<string, Question> {
  const lastOnes = reachedFrom(questions, last)
  const onward = <B extends Branch>(branch: B): B =>
    'end' in branch.leads
      ? { ...branch, raise: [...branch.raise, branch.leads.end], leads: { to: last } }
      : branch
  return new Map(
    [...questions].map(([id, question]) => [
      id,
      lastOnes.has(id) ? question : withBranches(question, onward)
    ])
  )
}

function withBranches(question: Question, change: <B extends Branch>(branch: B) => B): Question {
  switch (question.kind) {
    case 'choice': {
      const answers = Object.entries(question.answers).map(
        ([id, branch]) => [id, change(branch)] as const
      )
      return { ...question, answers: Object.fromEntries(answers) }
    }
    case 'signs':
      return {
        ...question,
        turns: question.turns.map(change),
        otherwise: change(question.otherwise)
      }
    case 'measure':
      return {
        ...question,
        ranges: question.ranges.map(change),
        borderline: change(question.borderline),
        unsure: change(question.unsure)
      }
  }
}
