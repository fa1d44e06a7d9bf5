import type { SpokenAdvice } from '../tree/advice.ts'
import type { Recheck } from '../tree/tree.ts'
import { signalOf } from '../words/signals.ts'
import { type Caution, cautionText } from '../words/tree-texts.ts'
import { verdictText } from '../words/verdict-text.ts'
import type { Words } from '../words/words.ts'
import { callText, footText } from './call-text.ts'
import { type Making, section } from './making.ts'
import type { Report } from './report.ts'
import { sourcesOf } from './sources.ts'
import { standingText } from './standing-text.ts'

/**
 * A finished report as lines to read: the message, what to do now, then why, whom to call, sources.
 *
 * In an emergency only its own words and numbers stand: nothing may compete with them.
 */
export function outcomeText(report: Report, advice: SpokenAdvice, making: Making): string[] {
  const { words, paint } = making
  const head = [
    ...verdictLines(report, advice, making),
    ...useLine(report, making),
    ...doNow(advice, making)
  ]
  if (report.emergency) {
    return [...head, ...callText(report, making), '', ...standingText(report, making)]
  }
  const steps = (title: string, ids: readonly string[]) =>
    section(
      paint,
      words.t(`ui:${title}`),
      ids.map(step => `- ${words.t(`steps:${step}`)}`)
    )
  const caution = (title: string, cautions: readonly Caution[]) =>
    section(
      paint,
      words.t(`ui:${title}`),
      cautions.map(id => cautionText(words, report.tree.id, id))
    )
  return [
    ...head,
    ...steps('clean-up', advice.clean),
    ...steps('keep', advice.keep),
    ...steps('start-again', advice.startAgain),
    ...section(
      paint,
      words.t('ui:what-to-change'),
      advice.notes.map(note => `- ${words.t(`notes:${note}`)}`)
    ),
    ...caution('who-must-not', ['who-must-not', 'how-much']),
    ...caution('medical-help', ['medical-help']),
    ...callText(report, making),
    ...caution('because', ['not-proof', 'no-tested-recipe', 'when-in-doubt']),
    ...section(paint, words.t('ui:sources'), sourcesOf(report, making.sources).map(sourceLine)),
    '',
    footText(making),
    ...standingText(report, making)
  ]
}

function verdictLines(report: Report, advice: SpokenAdvice, { words, paint }: Making): string[] {
  const verdicts = [advice.verdict, ...advice.also].filter(id => id !== null)
  const { use } = report.walk.outcome
  return verdicts.flatMap(id => {
    const signal = signalOf(id)
    const name = verdictText(words, report.tree.id, id, 'name')
    const word =
      signal === 'none' ? '' : `${paint.signal(signal, words.t(`ui:signal.${signal}`))}  `
    return [
      '',
      `${word}${paint.strong(name)}`,
      verdictText(words, report.tree.id, id, 'message', use),
      ...(report.emergency ? [] : [verdictText(words, report.tree.id, id, 'why')])
    ]
  })
}

/** What may be drunk. Not in an emergency: there nobody asks. */
function useLine({ tree, walk, emergency }: Report, { words, paint }: Making): string[] {
  return emergency ? [] : ['', paint.strong(words.t(`${tree.id}:use.${walk.outcome.use}`))]
}

function doNow(advice: SpokenAdvice, { words, paint }: Making): string[] {
  const steps = advice.doNow.map((step, at) => `${at + 1}. ${words.t(`steps:${step}`)}`)
  const again = advice.recheck ? [recheckText(words, advice.recheck)] : []
  return section(paint, words.t('ui:do-now'), [...steps, ...again])
}

/** When to look again, in words. */
export function recheckText(words: Words, recheck: Recheck): string {
  if ('day' in recheck) return words.t('ui:recheck-day', { day: recheck.day })
  const [from, to] = recheck.hours
  if (from === to) return words.t('ui:recheck-hours-exact', { to })
  return words.t(`ui:recheck-hours${from === 0 ? '-within' : ''}`, { from, to })
}

function sourceLine(source: ReturnType<typeof sourcesOf>[number]): string {
  const made = [source.publisher, source.year].filter(part => part !== null).join(', ')
  return ['-', source.title, made && `(${made})`, source.address].filter(Boolean).join(' ')
}
