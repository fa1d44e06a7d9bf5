import type { Report } from '../office/report.ts'
import { type Said, type SaidCall, say } from '../words/say.ts'
import { sourceLine } from '../words/sources.ts'
import { footText, withPhone } from './call-text.ts'
import { type Making, section } from './making.ts'
import { standingText } from './standing-text.ts'

/**
 * A finished report as lines to read: the message, what to do now, then why, whom to call, sources.
 *
 * In an emergency only its own words and numbers stand: nothing may compete with them.
 */
export function outcomeText(report: Report, making: Making): string[] {
  const { words, paint } = making
  const said = say(report, words, making.sources)
  const calls = section(paint, words.t('ui:who-to-call'), callLines(said, making))
  const head = [...verdictLines(said, making), ...useLine(said, making), ...doNow(said, making)]
  if (said.emergency) return [...head, ...calls, '', ...standingText(report, making)]
  const sections = said.sections.map(({ id, title, lines }) => ({
    id,
    lines: section(
      paint,
      title,
      lines.map(line => `- ${line}`)
    )
  }))
  const last = sections.filter(({ id }) => id === 'because').flatMap(({ lines }) => lines)
  return [
    ...head,
    ...sections.filter(({ id }) => id !== 'because').flatMap(({ lines }) => lines),
    ...calls,
    ...last,
    ...section(
      paint,
      words.t('ui:sources'),
      said.sources.map(source => `- ${sourceLine(source)}`)
    ),
    '',
    footText(making),
    ...standingText(report, making)
  ]
}

function verdictLines({ verdicts }: Said, { paint }: Making): string[] {
  return verdicts.flatMap(({ signal, signalWord, name, message, why }) => {
    const word = signal === 'none' || !signalWord ? '' : `${paint.signal(signal, signalWord)}  `
    return ['', `${word}${paint.strong(name)}`, ...[message, why].filter(line => line !== null)]
  })
}

function useLine({ use }: Said, { paint }: Making): string[] {
  return use === null ? [] : ['', paint.strong(use)]
}

function doNow({ doNow: steps, recheck }: Said, { words, paint }: Making): string[] {
  const numbered = steps.map((step, at) => `${at + 1}. ${step}`)
  return section(paint, words.t('ui:do-now'), recheck ? [...numbered, recheck] : numbered)
}

function callLines({ calls, officeDoubt }: Said, { paint }: Making): string[] {
  const lines = calls.flatMap(({ name, phone, say: told }: SaidCall) => [
    `- ${paint.strong(withPhone(name, phone))}`,
    `  ${told}`
  ])
  return officeDoubt === null ? lines : [...lines, officeDoubt]
}
