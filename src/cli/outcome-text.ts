import type { Report } from '../report/report.ts'
import { outcomeLines, section } from '../words/outcome-lines.ts'
import { say } from '../words/say.ts'
import { footText } from './call-text.ts'
import type { Making } from './making.ts'
import { standingText } from './standing-text.ts'

/** A finished report as lines to read, with the numbers that stand at every foot. */
export function outcomeText(report: Report, making: Making): string[] {
  const { words, paint, sources } = making
  const said = say(report, words, sources)
  const foot = said.emergency ? [] : [footText(making)]
  const asked = section(
    paint,
    words.t('ui:follow-ups.title'),
    said.followUps.map(({ ask, answer }) => `- ${ask} ${answer}`)
  )
  return [
    ...outcomeLines(said, words, paint),
    ...asked,
    '',
    ...foot,
    ...standingText(report, making)
  ]
}
