import type { Goes, Lead, LeadRow, LeadTakes, LeadWhen } from '../key/key.ts'
import { answerHint, answerLabel } from '../words/tree-texts.ts'
import type { Words } from '../words/words.ts'
import { rangeText } from './table-words.ts'

/** One line of a printed lead. */
export interface Line extends LeadTakes {
  /** Null where it always counts. */
  readonly label: string | null
  readonly hint: string | null
  /** The answer whose drawing stands beside it; null where none is wanted. */
  readonly answer: string | null
  /** Null where what follows says where to go. */
  readonly goes: Goes | null
}

/** The lines of a lead as they are printed: what takes the same is one line. */
export function linesOf(words: Words, lead: Lead): readonly Line[] {
  const { rows, turns } = lead
  // An emergency sign is one line: what it takes, and that it stops.
  const stops = new Set(
    turns.flatMap(({ when, goes }) => ('stop' in goes && when.kind === 'sign' ? [when.sign] : []))
  )
  const onward = turns.filter(({ when, goes }) => !('stop' in goes && when.kind === 'sign'))
  const signs = new Set(rows.flatMap(({ when }) => (when.kind === 'sign' ? [when.sign] : [])))
  const ofRows = groupsOf(rows).map(({ row, signs: own }): Line => {
    const isStop = own.some(({ sign, value }) => value === 'yes' && stops.has(sign))
    return {
      ...row.takes,
      label: rowText(words, lead, row.when, own, signs.size),
      hint: null,
      answer: null,
      goes: isStop ? { stop: true } : null
    }
  })
  const alone = onward.length === 1 && rows.length > 0
  const ofTurns = onward.map(({ when, takes, goes }): Line => {
    const ends = 'end' in goes && !takes.sheets.includes(goes.end) ? [goes.end] : []
    const isAnswer = when.kind === 'answer' && lead.lookBack === null
    return {
      ...takes,
      sheets: [...takes.sheets, ...ends],
      label: alone && when.kind === 'otherwise' ? null : whenText(words, lead, when),
      hint: isAnswer ? (answerHint(words, lead.observation, when.answer) ?? null) : null,
      answer: isAnswer ? when.answer : null,
      goes
    }
  })
  return [...ofRows, ...ofTurns]
}

type SignWhen = Extract<LeadWhen, { kind: 'sign' }>

interface Group {
  readonly row: LeadRow
  /** What shares the row; empty where it is of no sign. */
  readonly signs: readonly SignWhen[]
}

/** Rows of signs: a yes with its own doubt where both take the same, and all doubts that take the same. */
function groupsOf(rows: readonly LeadRow[]): readonly Group[] {
  const groups: { row: LeadRow; signs: SignWhen[] }[] = []
  const same = (one: LeadTakes, other: LeadTakes) => JSON.stringify(one) === JSON.stringify(other)
  for (const row of rows) {
    const { when } = row
    const shares = groups.find(
      ({ row: { takes }, signs: [first, ...others] }) =>
        when.kind === 'sign' &&
        when.value === 'unsure' &&
        first !== undefined &&
        same(takes, row.takes) &&
        (first.value === 'unsure' || (first.sign === when.sign && others.length === 0))
    )
    if (shares !== undefined && when.kind === 'sign') shares.signs.push(when)
    else groups.push({ row, signs: when.kind === 'sign' ? [when] : [] })
  }
  return groups
}

/** `all`: how many signs the lead has: only a doubt about each of them goes without their names. */
function rowText(
  words: Words,
  lead: Lead,
  when: LeadWhen,
  signs: readonly SignWhen[],
  all: number
): string {
  const [first] = signs
  if (first === undefined) return whenText(words, lead, when)
  const label = (sign: string) => answerLabel(words, lead.observation, sign)
  if (first.value === 'yes') {
    const sign = label(first.sign)
    return signs.length === 1 ? sign : words.t('ui:key.or-not-sure', { sign })
  }
  if (signs.length === all && all > 1) return words.t('ui:key.in-doubt')
  const names = signs.map(({ sign }) => label(sign)).join(' · ')
  return words.t('ui:key.not-sure-of', { signs: names })
}

/** What has to be so for a line to count. */
function whenText(words: Words, { observation }: Lead, when: LeadWhen): string {
  const label = (answer: string) => answerLabel(words, observation, answer)
  switch (when.kind) {
    case 'answer':
      return label(when.answer)
    case 'sign':
      return label(when.sign)
    case 'any-sign': {
      const signs = when.signs.map(label).join(' · ')
      return words.t(`ui:key.${when.orUnsure ? 'any-or-unsure' : 'any'}`, { signs })
    }
    case 'range':
      return limitsText(words, observation, when)
    case 'reading':
      return rangeText(words, when.range, 'key.range')
    case 'unsure':
      return words.t('ui:key.not-measured')
    case 'otherwise':
      return words.t('ui:key.otherwise')
  }
}

/** The limits by instrument; where nobody knows it, those of the widest, which stands last. */
function limitsText(
  words: Words,
  observation: string,
  { limits }: Extract<LeadWhen, { kind: 'range' }>
): string {
  const named = limits.filter(({ instrument }) => instrument !== null)
  if (named.length === 0)
    return limits.map(({ range }) => rangeText(words, range, 'key.range')).join('; ')
  return named
    .map(({ instrument, range }) =>
      words.t('ui:key.by-instrument', {
        instrument: words.t(`observations:${observation}.instruments.${instrument}`),
        limits: rangeText(words, range, 'key.range')
      })
    )
    .join('; ')
}

/** Where a line sends whoever follows it. */
export function goesText(words: Words, goes: Goes): string {
  if ('stop' in goes) return words.t('ui:key.stop')
  if ('end' in goes) return words.t('ui:key.done')
  if (goes.as === undefined) return words.t('ui:key.go', { lead: goes.to })
  return words.t('ui:key.as', {
    lead: goes.to,
    answer: answerLabel(words, goes.as.observation, goes.as.answer)
  })
}
