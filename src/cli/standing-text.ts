import type { Report } from '../office/report.ts'
import { standingOf } from '../words/say.ts'
import type { Making } from './making.ts'
import { PROMPTS } from './prompts.ts'

/** Which tree speaks, in which edition, how far it is reviewed, and whether that is overdue. */
export function standingText(report: Report, { words, paint }: Making): string[] {
  const { title, edition, draft, overdue, due } = standingOf(report, words)
  return [
    paint.faint(`${title} · ${edition}`),
    ...[draft, overdue].filter(line => line !== null).map(line => paint.strong(line)),
    ...(overdue === null ? [paint.faint(PROMPTS.reviewDue(due))] : [])
  ]
}
