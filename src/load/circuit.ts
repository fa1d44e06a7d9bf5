import { reachedFrom, shortestCircle, sortedByWalk } from '../tree/circuit.ts'
import type { Question } from '../tree/tree.ts'
import type { DraftQuestion } from './expand.ts'
import type { FindingReport } from './report.ts'

/**
 * The questions so that each stands before those it leads to, as authored where both would do.
 * Null when a question cannot be reached or a walk can go in a circle, which is reported.
 */
export function inWalkOrder(
  questions: ReadonlyMap<string, Question>,
  start: string,
  drafts: ReadonlyMap<string, DraftQuestion>,
  report: FindingReport
): readonly Question[] | null {
  const before = report.findings.length
  const reached = reachedFrom(questions, start)
  for (const id of questions.keys()) {
    const draft = drafts.get(id)
    if (reached.has(id) || !draft) continue
    report.add('unreachable-question', draft.place([]), { question: id }, draft.because)
  }
  const circle = shortestCircle(questions)
  const first = circle && drafts.get(circle[0] ?? '')
  if (circle && first) {
    report.add('circle', first.place([]), { questions: [...circle, first.id] }, first.because)
  }
  return report.findings.length > before ? null : sortedByWalk(questions)
}
