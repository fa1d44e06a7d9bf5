import type { Destination, Question } from '../tree/tree.ts'
import type { DraftQuestion } from './expand.ts'
import type { Report } from './report.ts'

/** Where a question can lead, each question once. */
export function leadsFrom(question: Question): readonly string[] {
  const to = new Set<string>()
  const add = (leads: Destination): void => {
    if ('to' in leads) to.add(leads.to)
  }
  switch (question.kind) {
    case 'choice':
      for (const { leads } of Object.values(question.answers)) add(leads)
      break
    case 'signs':
      for (const { leads } of [...question.turns, question.otherwise]) add(leads)
      break
    case 'measure':
      for (const { leads } of [...question.ranges, question.borderline, question.unsure]) add(leads)
  }
  return [...to]
}

/**
 * The questions so that each stands before those it leads to, as authored where both would do.
 * Null when a question cannot be reached or a walk can go in a circle, which is reported.
 */
export function inWalkOrder(
  questions: ReadonlyMap<string, Question>,
  start: string,
  drafts: ReadonlyMap<string, DraftQuestion>,
  report: Report
): readonly Question[] | null {
  const before = report.findings.length
  const reached = reachable(questions, start)
  for (const id of questions.keys()) {
    const draft = drafts.get(id)
    if (reached.has(id) || !draft) continue
    report.add('unreachable-question', draft.place([]), { question: id }, draft.because)
  }
  const order = sorted(questions)
  const left = new Map([...questions].filter(([id]) => !order.some(question => question.id === id)))
  const circle = shortestCircle(left)
  const first = circle && drafts.get(circle[0] ?? '')
  if (circle && first) {
    report.add('circle', first.place([]), { questions: [...circle, first.id] }, first.because)
  }
  return report.findings.length > before ? null : order
}

function reachable(questions: ReadonlyMap<string, Question>, start: string): ReadonlySet<string> {
  const reached = new Set([start])
  for (const id of reached) {
    const question = questions.get(id)
    // A set that grows while it is gone through: each question is visited once.
    for (const next of question ? leadsFrom(question) : []) reached.add(next)
  }
  return reached
}

function sorted(questions: ReadonlyMap<string, Question>): readonly Question[] {
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
      const at = ready.findIndex(({ id }) => (rank.get(id) ?? 0) > (rank.get(next) ?? 0))
      ready.splice(at < 0 ? ready.length : at, 0, found)
    }
  }
  return order
}

function shortestCircle(questions: ReadonlyMap<string, Question>): readonly string[] | null {
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
