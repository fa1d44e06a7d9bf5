import type { Branch, Question } from './tree.ts'

/** Every way out of a question. */
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

/** Where a question can lead, each question once. */
export function leadsFrom(question: Question): readonly string[] {
  return [
    ...new Set(branchesOf(question).flatMap(({ leads }) => ('to' in leads ? [leads.to] : [])))
  ]
}

type Questions = ReadonlyMap<string, Question>

/** The questions that some way from a question leads to, itself among them. */
export function reachedFrom(questions: Questions, start: string): ReadonlySet<string> {
  const reached = new Set([start])
  for (const id of reached) {
    const question = questions.get(id)
    // A set that grows while it is gone through: each question is visited once.
    for (const next of question ? leadsFrom(question) : []) reached.add(next)
  }
  return reached
}

/** The questions from which some way leads to a question, itself among them. */
export function leadingTo(questions: Questions, target: string): ReadonlySet<string> {
  const leads = [...questions].map(([id, question]) => [id, leadsFrom(question)] as const)
  const leading = new Set([target])
  for (const to of leading) {
    for (const [id, next] of leads) if (next.includes(to)) leading.add(id)
  }
  return leading
}

/**
 * The questions so that each stands before those it leads to, as given where both would do. What lies
 * on a circle, or only behind one, is left out.
 */
export function sortedByWalk(questions: Questions): readonly Question[] {
  const incoming = new Map([...questions.keys()].map(id => [id, 0]))
  for (const question of questions.values()) {
    for (const next of leadsFrom(question)) incoming.set(next, (incoming.get(next) ?? 0) + 1)
  }
  const rank = new Map([...questions.keys()].map((id, index) => [id, index]))
  const ready = [...questions.values()].filter(({ id }) => incoming.get(id) === 0)
  const order: Question[] = []
  for (let question = ready.shift(); question; question = ready.shift()) {
    order.push(question)
    for (const next of leadsFrom(question)) {
      const open = (incoming.get(next) ?? 0) - 1
      incoming.set(next, open)
      const found = questions.get(next)
      if (open !== 0 || !found) continue
      const place = ready.findIndex(({ id }) => (rank.get(id) ?? 0) > (rank.get(next) ?? 0))
      ready.splice(place < 0 ? ready.length : place, 0, found)
    }
  }
  return order
}

/** The questions of the shortest circle that a walk can go in, or null where there is none. */
export function shortestCircle(all: Questions): readonly string[] | null {
  const sorted = new Set(sortedByWalk(all).map(({ id }) => id))
  const questions = new Map([...all].filter(([id]) => !sorted.has(id)))
  const leads = new Map(
    [...questions].map(([id, each]) => [id, leadsFrom(each).filter(to => questions.has(to))])
  )
  let shortest: readonly string[] | null = null
  for (const start of leads.keys()) {
    const way = wayBack(leads, start, shortest?.length ?? Number.POSITIVE_INFINITY)
    if (way) shortest = way
  }
  return shortest
}

function wayBack(
  leads: ReadonlyMap<string, readonly string[]>,
  start: string,
  shorterThan: number
): readonly string[] | null {
  const cameFrom = new Map<string, string>()
  let edge = [start]
  for (let length = 1; edge.length > 0 && length < shorterThan; length++) {
    const next: string[] = []
    for (const id of edge) {
      for (const to of leads.get(id) ?? []) {
        if (to === start) return trace(cameFrom, start, id)
        if (cameFrom.has(to)) continue
        cameFrom.set(to, id)
        next.push(to)
      }
    }
    edge = next
  }
  return null
}

function trace(cameFrom: ReadonlyMap<string, string>, start: string, last: string): string[] {
  const way = [last]
  for (let id = last; id !== start; ) {
    id = cameFrom.get(id) ?? start
    way.unshift(id)
  }
  return way
}
