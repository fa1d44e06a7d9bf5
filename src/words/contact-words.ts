import type { Contact, LogEntry } from '../contacts/contact.ts'
import type { LogTable } from '../contacts/log-report.ts'
import type { OfficeCounty } from '../office/office-pack.ts'
import { inLatinDigits } from './direction.ts'
import type { Words } from './words.ts'

/** The name of what a table of the contact log counts by: `likely-mold`, `99001`, `es`. */
export function contactKeyName(
  words: Words,
  counties: readonly OfficeCounty[],
  table: LogTable,
  key: string
): string {
  switch (table) {
    case 'language':
      return languageName(words, key)
    case 'area':
      return areaName(words, counties, key)
    case 'know-how':
      return key === 'none' ? words.t('ui:contacts.keys.none') : key
    case 'topic':
      if (words.has(`${key}:title`)) return words.t(`${key}:title`)
      break
    case 'batch':
    case 'container':
      if (words.has(`verdicts:${key}.name`)) return words.t(`verdicts:${key}.name`)
      break
    default:
  }
  // A tree of another desk may have a name that is not known here.
  const found = KEYS.find(one => one === key)
  return found === undefined ? key : words.t(`ui:contacts.keys.${found}`)
}

const KEYS = [
  ...(['phone', 'call-back', 'walk-in', 'email', 'event', 'direct', 'indirect'] as const),
  ...(['canning', 'pickling', 'jam-and-jelly', 'freezing', 'drying', 'meat-and-fish'] as const),
  ...(['storage', 'equipment', 'other-topic', 'referred', 'none', 'unknown'] as const),
  ...(['state-specialist', 'other-county', 'regulator', 'resolved', 'pending'] as const),
  ...(['yes', 'no'] as const)
]

/** A language in the words of another. */
export function languageName(words: Words, tag: string): string {
  try {
    return new Intl.DisplayNames([words.tag], { type: 'language' }).of(tag) ?? tag
  } catch {
    // Two letters that are no language.
    return tag
  }
}

function areaName(words: Words, counties: readonly OfficeCounty[], area: string): string {
  if (area === 'unknown') return words.t('ui:contacts.keys.unknown')
  if (area.length === 3) return words.t('ui:contacts.keys.zip', { digits: area })
  const found = counties.find(({ code }) => code === area)
  return found?.name ?? words.t('ui:contacts.keys.county', { code: area })
}

/** A language as it is written where the office is: numbers in Spanish have a point in the United States. */
export const inCountry = ({ tag }: Words): string => inLatinDigits(`${tag}-US`)

const formats = new Map<string, Intl.DateTimeFormat>()

/** A day, YYYY-MM-DD, as a language writes it. */
export function dayText(words: Words, day: string): string {
  const tag = inCountry(words)
  // Making one takes longer than all else in a line.
  const format =
    formats.get(tag) ?? new Intl.DateTimeFormat(tag, { dateStyle: 'medium', timeZone: 'UTC' })
  formats.set(tag, format)
  return format.format(new Date(`${day}T00:00:00Z`))
}

/** One entry in a line: what it was about, what was told, how, and how long. */
export function entryLine(
  words: Words,
  counties: readonly OfficeCounty[],
  entry: LogEntry
): string {
  const minutes = words.t('ui:contacts.minutes', { count: entry.minutes })
  if (entry.kind === 'hours') {
    return `${words.t('ui:contacts.columns.volunteer')} ${entry.volunteer}, ${minutes}`
  }
  const name = (table: LogTable, key: string) => contactKeyName(words, counties, table, key)
  return [
    name('topic', entry.tree ?? entry.topic),
    ...toldOf(entry).map(([table, key]) => name(table, key)),
    name('method', entry.method),
    ...(entry.state === 'pending' ? [name('state', 'pending')] : []),
    minutes
  ].join(', ')
}

const toldOf = ({
  referred,
  batch,
  container
}: Contact): readonly (readonly [LogTable, string])[] =>
  referred
    ? [['batch', 'referred']]
    : [
        ...(container === null ? [] : [['container', container] as const]),
        ...(batch === null ? [] : [['batch', batch] as const])
      ]
