import type { Report } from '../office/report.ts'
import { outcomeLines } from '../words/outcome-lines.ts'
import { say } from '../words/say.ts'
import { footText } from './call-text.ts'
import type { Making } from './making.ts'
import { standingText } from './standing-text.ts'

/** A finished report as lines to read, with the numbers that stand at every foot. */
export function outcomeText(report: Report, making: Making): string[] {
  const { words, paint, sources } = making
  const said = say(report, words, sources)
  const foot = said.emergency ? [] : [footText(making)]
  return [...outcomeLines(said, words, paint), '', ...foot, ...standingText(report, making)]
}
