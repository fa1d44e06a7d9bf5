import type { LanguageFacts } from './language.ts'
import { type TextFault, type TextPair, unlike, without } from './pair.ts'

const PHONE = /(?:\d-)?(?:\d{3}-)?\d{3}-\d{4}/
const NUMBER = /\d+(?:[.,]\d+)*(?:[/⁄]\d+)?/
const FRACTION = /[¼-¾⅐-⅞]/g

/** A number of a text with the unit beside it, if there is one. */
export interface ToldAmount {
  readonly value: string
  readonly unit: string
  /** Whether it is written in digits. */
  readonly digits: boolean
  readonly end: number
}

/** Small letters, gaps as spaces, `1½` and `1 1/2` alike. */
const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/\{\{[^}]*\}\}/g, ' ')
    .replace(FRACTION, fraction => ` ${fraction.normalize('NFKC')}`)

/** Longer names first, so that `ml` is not read as `m`. */
const unitPattern = ({ units }: LanguageFacts): string =>
  Object.values(units)
    .sort((a, b) => b.length - a.length)
    .join('|')

/** The patterns of a language, made once: every text is asked. */
interface Patterns {
  readonly each: RegExp
  readonly after: RegExp | null
  readonly before: RegExp | null
  readonly measures: RegExp | null
  unitNamed(written: string): string
}

const made = new Map<string, Patterns>()

function patternsOf(language: LanguageFacts | null): Patterns {
  const tag = language?.tag ?? ''
  const known = made.get(tag)
  if (known) return known
  const words = Object.keys(language?.numbers ?? {}).join('|')
  // Where words stand without spaces, only a Latin letter beside a form makes another word of it.
  const letters = language?.spaced === false ? 'a-z' : '\\p{L}'
  const [begins, ends] = [`(?<![${letters}])`, `(?![${letters}])`]
  const units = language && unitPattern(language)
  const named = new Map<string, string>()
  const whole = Object.entries(language?.units ?? {}).map(
    ([unit, how]) => [unit, new RegExp(`^(?:${how})$`, 'u')] as const
  )
  const patterns: Patterns = {
    each: new RegExp(
      `${PHONE.source}|${NUMBER.source}${words && `|${begins}(?:${words})${ends}`}`,
      'gu'
    ),
    after: units
      ? new RegExp(`^[\\s-]?(?:(?:${language?.beforeUnits}) )?(${units})${ends}`, 'u')
      : null,
    before: units ? new RegExp(`${begins}(${units})\\s$`, 'u') : null,
    measures: units
      ? new RegExp(`(?<![${letters}\\d/])(?:${units}|ph)(?![${letters}/])`, 'gu')
      : null,
    unitNamed(written) {
      const found = named.get(written) ?? whole.find(([, how]) => how.test(written))?.[0] ?? ''
      named.set(written, found)
      return found
    }
  }
  made.set(tag, patterns)
  return patterns
}

/** The longest unit, with what stands before it. */
const UNIT_AT_MOST = 24
const BETWEEN = /^\s*(?:[–-]|or|to|and|o|u|a|y|e|,)?\s*(?=\d)/u

/** The numbers of a text in their order, in digits and as words, each with its unit. */
export function amountsIn(text: string, language: LanguageFacts | null): readonly ToldAmount[] {
  const told = plain(text)
  const { each, after, before, unitNamed } = patternsOf(language)
  const found: ToldAmount[] = [...told.matchAll(each)].map(match => {
    const [written] = match
    const at = match.index
    const end = at + written.length
    const unit =
      after?.exec(told.slice(end, end + UNIT_AT_MOST))?.[1] ??
      before?.exec(told.slice(Math.max(0, at - UNIT_AT_MOST), at))?.[1]
    return {
      value: language?.numbers[written] ?? written.replaceAll(',', '.').replace('⁄', '/'),
      unit: unit ? unitNamed(unit) : '',
      digits: /^\d/.test(written),
      end
    }
  })
  // In "3–4 weeks" the first number has the unit of the second.
  return found.map((amount, at) => {
    const next = found[at + 1]
    const between = amount.unit === '' && next ? BETWEEN.exec(told.slice(amount.end)) : null
    return between && next && /^\S/.test(told.slice(amount.end + between[0].length))
      ? { ...amount, unit: next.unit }
      : amount
  })
}

/** The numbers, fractions and phone numbers that a text says in digits, each as often as it does. */
export const numbersIn = (text: string): readonly string[] =>
  amountsIn(text, null).map(({ value }) => value)

const TIME: ReadonlySet<string> = new Set([
  ...['second', 'minute', 'hour', 'day', 'week', 'month', 'year']
])

/** Numbers as often as the English says them, in its order, with its units and on its side of a limit. */
export function amountFaults(
  { english, target }: TextPair,
  source: LanguageFacts,
  language: LanguageFacts | null
): readonly TextFault[] {
  const inWords = language !== null && Object.keys(language.numbers).length > 0
  const compared = (text: string, facts: LanguageFacts | null) =>
    amountsIn(text, facts).filter(({ digits }) => inWords || digits)
  const ours = compared(english, language && source)
  const theirs = compared(target, language)
  const values = (amounts: readonly ToldAmount[]) => amounts.map(({ value }) => value)
  const other = unlike('numbers', values(ours), values(theirs))
  const order = (amounts: readonly ToldAmount[]) => values(amounts.filter(({ digits }) => digits))
  const faults: TextFault[] = other ? [other] : []
  if (!other && order(ours).join(' ') !== order(theirs).join(' ')) {
    faults.push({
      rule: 'numbers',
      lacks: [order(ours).join(', ')],
      adds: [order(theirs).join(', ')]
    })
  }
  if (language === null) return faults
  faults.push(...unitFaults(ours, theirs))
  const measures = unlike('units', measuresIn(english, source), measuresIn(target, language))
  if (measures && faults.length === 0) faults.push(measures)
  const bounds = boundFault(english, target, source, language)
  return bounds ? [...faults, bounds] : faults
}

/** Numbers whose unit is another one. A number may do without a unit of time: "under 18" is of years. */
function unitFaults(
  ours: readonly ToldAmount[],
  theirs: readonly ToldAmount[]
): readonly TextFault[] {
  const lacks: string[] = []
  const adds: string[] = []
  for (const value of new Set(ours.map(amount => amount.value))) {
    const unitsOf = (amounts: readonly ToldAmount[]) =>
      amounts.filter(amount => amount.value === value).map(({ unit }) => unit)
    // A number that is missing has been told of by itself.
    if (unitsOf(ours).length !== unitsOf(theirs).length) continue
    const lost = without(unitsOf(ours), unitsOf(theirs))
    const added = without(unitsOf(theirs), unitsOf(ours))
    for (const [at, unit] of lost.entries()) {
      const instead = added[at] ?? ''
      const either = unit || instead
      if ((unit === '' || instead === '') && (TIME.has(either) || either === '')) continue
      lacks.push(`${value} ${unit}`.trim())
      adds.push(`${value} ${instead}`.trim())
    }
  }
  return lacks.length > 0 ? [{ rule: 'units', lacks, adds }] : []
}

/** Every measure that a text names, with a number or without; times are in too many turns of speech. */
function measuresIn(text: string, language: LanguageFacts): readonly string[] {
  const { measures, unitNamed } = patternsOf(language)
  if (measures === null) return []
  const apart = plain(text)
    .replace(/(\d)(?=[\p{L}°%])/gu, '$1 ')
    .replace(/-/g, ' ')
  return [...apart.matchAll(measures)]
    .map(([written]) => (written === 'ph' ? 'pH' : unitNamed(written)))
    .filter(unit => !TIME.has(unit) && unit !== 'foot')
}

/** "Or more" where English has "or less", or the other way about. */
function boundFault(
  english: string,
  target: string,
  { bounds: ours }: LanguageFacts,
  { bounds: theirs, spaced }: LanguageFacts
): TextFault | null {
  const said = plain(english)
  const told = plain(target)
  const times = (text: string, words: string, apart = true) =>
    text.match(new RegExp(apart ? `(?<![\\p{L}])(?:${words})(?![\\p{L}])` : words, 'gu'))?.length ??
    0
  for (const [up, down] of [
    ['orMore', 'orLess'],
    ['over', 'under']
  ] as const) {
    const least = times(said, ours[up]) - times(told, theirs[up], spaced)
    const most = times(said, ours[down]) - times(told, theirs[down], spaced)
    if (least > 0 && most < 0) return { rule: 'bounds', lacks: ['at least'], adds: ['at most'] }
    if (least < 0 && most > 0) return { rule: 'bounds', lacks: ['at most'], adds: ['at least'] }
  }
  return null
}
