import type { Answers } from './answers.ts'
import { decide } from './decide.ts'
import type { Branch, Question, Tree } from './tree.ts'
import { walk } from './walk.ts'

/**
 * How many things can still be asked at most, the waiting one not counted. A bound, never too low:
 * it follows every way that the told answers leave, even where two untold answers exclude each other.
 */
export function atMostMore(tree: Tree, answers: Answers): number {
  const { asks } = walk(tree, answers)
  return asks === null ? 0 : longest(tree, answers, asks.question) - 1
}

/** The most things asked on any walk, from the start. */
export function mostScreens(tree: Tree): number {
  return longest(tree, {}, tree.start)
}

function longest(tree: Tree, answers: Answers, from: string): number {
  const known = new Map<string, number>()
  const visit = (id: string, asked: readonly string[]): number => {
    const key = `${id} ${asked}`
    const before = known.get(key)
    if (before !== undefined) return before
    const question = tree.questions[id] as Question
    const stops = !asked.includes(question.asks) && decide(tree, question, answers) === undefined
    const now = stops ? [...asked, question.asks].sort() : asked
    const after = waysOut(tree, question, answers).map(({ leads }) =>
      'end' in leads ? 0 : visit(leads.to, now)
    )
    const most = Math.max(0, ...after) + (stops ? 1 : 0)
    known.set(key, most)
    return most
  }
  return visit(from, [])
}

/** The branch that the answers take, or every one while they leave it open. */
function waysOut(tree: Tree, question: Question, answers: Answers): readonly Branch[] {
  const decision = decide(tree, question, answers)
  const told = Object.hasOwn(answers, question.asks)
  return decision !== undefined && told ? [decision.branch] : branchesOf(question)
}

/** Every branch of a question. */
export function branchesOf(question: Question): readonly Branch[] {
  switch (question.kind) {
    case 'choice':
      return Object.values(question.answers)
    case 'signs':
      return [...question.turns, question.otherwise]
    case 'measure':
      return [...question.ranges, question.borderline, question.unsure]
  }
}
