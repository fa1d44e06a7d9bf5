import type { Answers } from './answers.ts'
import { settlersOf } from './answers.ts'
import { decide } from './decide.ts'
import type { Branch, Question, Tree } from './tree.ts'
import type { Walk } from './walk.ts'

/** The number of the question being asked, and how many more can follow it at the very most. */
export interface Progress {
  readonly question: number
  readonly atMostMore: number
}

/** The most things asked on any walk, from the start. */
export function mostScreens(tree: Tree): number {
  return stopsFrom(tree, {}, tree.start)
}

/** How far a walk has come. An upper bound: answers may rule out the longest way, never lengthen it. */
export function progressOf(tree: Tree, answers: Answers, walk: Walk): Progress {
  const longest = walk.asks ? stopsFrom(tree, answers, walk.asks.question) : 1
  return { question: askedOn(tree, walk).length + 1, atMostMore: longest - 1 }
}

/** The observations asked on a walk, in order, each once. */
export function askedOn(tree: Tree, walk: Walk): readonly string[] {
  const asked = walk.trail
    .filter(({ question }) => stops(tree.questions[question]))
    // A settling question leaves the trail once its answer counts, but it was asked all the same.
    .flatMap(({ observation, settledBy }) => [observation, settledBy?.observation ?? observation])
  return [...new Set(asked)]
}

/** The most questions that can still stop to ask, from one question on and including it. */
function stopsFrom(tree: Tree, answers: Answers, start: string): number {
  const known = new Map<string, number>()
  const longest = (id: string, asked: readonly string[]): number => {
    const key = [id, ...asked].join(' ')
    const before = known.get(key)
    if (before !== undefined) return before
    // Stands in while this is worked out, so that a settled question read again cannot go round.
    known.set(key, 0)
    const question = tree.questions[id]
    if (question === undefined) return 0
    const decision = isFixed(tree, question, answers) && decide(tree, question, answers)
    const stop = !decision && stops(question) && isOpen(tree, question, answers, asked)
    const now = stop ? [...asked, question.asks].sort() : asked
    const branches = decision ? [decision.branch] : branchesOf(tree, question)
    const rest = branches.map(({ leads }) => ('to' in leads ? longest(leads.to, now) : 0))
    const most = Math.max(0, ...rest) + (stop ? 1 : 0)
    known.set(key, most)
    return most
  }
  return longest(start, [])
}

const stops = (question: Question | undefined): boolean =>
  question !== undefined && !(question.kind === 'signs' && question.volunteered)

const isOpen = (
  tree: Tree,
  question: Question,
  answers: Answers,
  asked: readonly string[]
): boolean => !asked.includes(question.asks) && !decide(tree, question, answers)

/** Whether no answer still to come can change what this question makes of the answers. */
const isFixed = (tree: Tree, question: Question, answers: Answers): boolean =>
  settlersOf(tree, question.asks).every(({ id }) => Object.hasOwn(answers, id))

function branchesOf(tree: Tree, question: Question): readonly Branch[] {
  switch (question.kind) {
    case 'signs':
      return [...question.turns, question.otherwise]
    case 'measure':
      return [...question.ranges.map(range => range), question.borderline, question.unsure]
    case 'choice':
      return [...Object.values(question.answers), ...settledBranches(tree, question.asks)]
  }
}

/** A settling answer sends the walk back to where the settled observation is read. */
function settledBranches(tree: Tree, asks: string): readonly Branch[] {
  const observation = tree.observations[asks]
  const settles = observation?.kind === 'choice' ? observation.settles : undefined
  return Object.values(tree.questions).flatMap(question =>
    question.kind === 'choice' && question.asks === settles
      ? Object.entries(question.answers).flatMap(([answer, branch]) =>
          answer === 'unsure' ? [] : [branch]
        )
      : []
  )
}
