import type { Evaluation } from '../evaluate/evaluate.ts'
import type { WalkReport } from '../report/report.ts'
import { isAskedFromMemory } from '../tree/caution.ts'
import { TRACKS } from '../tree/observation.ts'
import { answerText } from '../words/answer-text.ts'
import { askKey } from '../words/ask-key.ts'
import { section } from '../words/outcome-lines.ts'
import { alarmLines } from './alarm-lines.ts'
import { footText } from './call-text.ts'
import type { Making } from './making.ts'
import { PROMPTS } from './prompts.ts'
import { standingText } from './standing-text.ts'

/** A walk that is not finished, as lines: what was told, what is asked next, what it comes to at least. */
export function unfinishedText(report: WalkReport, making: Making): string[] {
  const { words, paint } = making
  const { asks } = report.evaluation.walk
  const { atLeast } = report.evaluation.possible
  const least = TRACKS.flatMap(track => atLeast[track] ?? [])
  const { tree } = report
  const recalled =
    asks !== null &&
    tree.observations[asks.observation]?.about !== 'person' &&
    isAskedFromMemory(tree, atLeast.container)
  const next = asks
    ? PROMPTS.notFinished(asks.observation, words.t(askKey(words, asks.observation, recalled)))
    : ''
  return [
    ...alarmLines(report.tree, atLeast, making),
    ...section(paint, words.t('ui:trail'), answerLines(report.evaluation, making)),
    '',
    next,
    PROMPTS.atLeast(least, atLeast.use),
    '',
    footText(making),
    ...standingText(report, making)
  ]
}

/** Every answer told, in the order of the tree. */
function answerLines({ tree, answers }: Evaluation, { words }: Making): string[] {
  return Object.values(tree.observations).flatMap(observation => {
    const answer = answers[observation.id]
    return answer === undefined
      ? []
      : [`- ${observation.id}: ${answerText(words, observation, answer)}`]
  })
}
