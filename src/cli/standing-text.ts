import type { Report } from '../report/report.ts'
import { standingLines } from '../words/outcome-lines.ts'
import { standingOf } from '../words/say.ts'
import type { Making } from './making.ts'
import { PROMPTS } from './prompts.ts'

/** Which tree speaks and how far it is reviewed; with the day that the review is due. */
export function standingText(report: Report, { words, paint }: Making): string[] {
  const standing = standingOf(report, words)
  const due = standing.overdue === null ? [paint.faint(PROMPTS.reviewDue(standing.due))] : []
  return [...standingLines({ standing }, paint), ...due]
}
