import type { Making } from './making.ts'
import { PROMPTS } from './prompts.ts'
import type { Report } from './report.ts'

/** Which tree speaks, in which edition, how far it is reviewed, and whether that is overdue. */
export function standingText(report: Report, { words, paint }: Making): string[] {
  const { id, edition, review } = report.tree
  const state = [
    ...(review.state === 'draft' ? [words.t('ui:draft')] : []),
    ...(report.overdue ? [words.t('ui:overdue', { due: review.due })] : [])
  ]
  return [
    paint.faint(`${words.t(`${id}:title`)} · ${words.t('ui:edition', { edition })}`),
    ...state.map(line => paint.strong(line)),
    ...(report.overdue ? [] : [paint.faint(PROMPTS.reviewDue(review.due))])
  ]
}
