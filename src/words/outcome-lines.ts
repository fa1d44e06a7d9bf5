import { type Emphasis, PLAIN } from './emphasis.ts'
import type { Said } from './say.ts'
import { sourceLine } from './sources.ts'
import type { Words } from './words.ts'

/**
 * A finished walk as lines of text: the message, what to do now, then why, whom to call, sources.
 *
 * In an emergency only its own words and numbers stand: nothing may compete with them.
 */
export function outcomeLines(said: Said, words: Words, paint: Emphasis = PLAIN): string[] {
  const titled = (title: string, lines: readonly string[]) => section(paint, title, lines)
  const calls = titled(words.t('ui:who-to-call'), callLines(said, paint))
  const head = [
    ...verdictLines(said, paint),
    ...(said.use === null ? [] : ['', paint.strong(said.use)]),
    ...titled(words.t('ui:do-now'), doNowLines(said)),
    ...titled(words.t('ui:later'), numbered(said.later, said.doNow.length))
  ]
  if (said.emergency) return [...head, ...calls]
  const parts = said.sections.map(({ id, title, lines }) => ({
    last: id === 'keep-in-mind' || id === 'what-is-known',
    lines: titled(
      title,
      lines.map(line => `- ${line}`)
    )
  }))
  const sources = said.sources.map(source => `- ${sourceLine(source)}`)
  return [
    ...head,
    ...parts.filter(({ last }) => !last).flatMap(({ lines }) => lines),
    ...calls,
    ...parts.filter(({ last }) => last).flatMap(({ lines }) => lines),
    ...titled(words.t('ui:sources'), sources)
  ]
}

/** A heading and its lines, with a blank line before; nothing where there are no lines. */
export function section(paint: Emphasis, title: string, lines: readonly string[]): string[] {
  return lines.length > 0 ? ['', paint.strong(title), ...lines] : []
}

/** Which tree speaks, in which edition, how far it is reviewed, and whether that is overdue. */
export function standingLines(
  { standing }: Pick<Said, 'standing'>,
  paint: Emphasis = PLAIN
): string[] {
  const { title, edition, draft, overdue } = standing
  return [
    paint.faint(`${title} · ${edition}`),
    ...[draft, overdue].filter(line => line !== null).map(line => paint.strong(line))
  ]
}

/** A name and its number; a name that says the number already says it once. */
export const withPhone = (name: string, phone: string | null): string =>
  phone === null || name.includes(phone) ? name : `${name}: ${phone}`

function verdictLines({ verdicts }: Said, paint: Emphasis): string[] {
  return verdicts.flatMap(({ signal, signalWord, name, message, why }) => {
    const word = signalWord === null ? '' : `${paint.signal(signal, signalWord)}  `
    return ['', `${word}${paint.strong(name)}`, ...[message, why].filter(line => line !== null)]
  })
}

function doNowLines({ doNow, recheck }: Said): string[] {
  const steps = numbered(doNow)
  return recheck === null ? steps : [...steps, recheck]
}

const numbered = (steps: readonly string[], before = 0): string[] =>
  steps.map((step, index) => `${before + index + 1}. ${step}`)

function callLines({ calls, officeDoubt }: Said, paint: Emphasis): string[] {
  const lines = calls.flatMap(({ name, phone, say }) => [
    `- ${paint.strong(withPhone(name, phone))}`,
    `  ${say}`
  ])
  return officeDoubt === null ? lines : [...lines, officeDoubt]
}
