import { isDay } from '../office/plain-text.ts'
import {
  BATCH_VERDICTS,
  CONTACT_STATES,
  CONTAINER_VERDICTS,
  type Contact,
  LOGGED_REFERRALS,
  type LogEntry,
  METHODS,
  OTHER_TOPICS,
  type Subject,
  type VolunteerHours,
  type WhatWasTold
} from './contact.ts'

/** An entry, or in one sentence why this is none. */
export type EntryReading = { readonly entry: LogEntry } | { readonly fault: string }

/** What is wrong with a field of an entry. */
class Wrong extends Error {}

const ID = /^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/
const MARK = /^[0-9a-f]{8}$/
const NAME = /^[a-z][a-z0-9]*(?:-[a-z0-9]+){0,7}$/
const LONGEST_NAME = 48
const FINGERPRINT = /^[0-9a-f]{12}$/
const LANGUAGE = /^[a-z]{2,3}$/
const AREA = /^(?:\d{5}|\d{3})$/

/** How many fields each kind has: one more is refused, whatever it is. */
const FIELDS = { contact: 24, hours: 8 } as const

type Given = Readonly<Record<string, unknown>>

/**
 * Reads an entry from parsed JSON. Only what the log's own fields can hold comes through: a field too
 * many, or a text where a code belongs, is refused, so that no name or number can ride along.
 */
export function readEntry(given: unknown): EntryReading {
  if (!isRecord(given)) return { fault: 'this is no record' }
  try {
    return { entry: entryOf(given) }
  } catch (error) {
    if (error instanceof Wrong) return { fault: error.message }
    throw error
  }
}

const isRecord = (given: unknown): given is Given =>
  typeof given === 'object' && given !== null && !Array.isArray(given)

/** Reads one line of a JSON Lines file. */
export function readLine(line: string): EntryReading {
  let given: unknown
  try {
    given = JSON.parse(line)
  } catch {
    return { fault: 'this is no JSON' }
  }
  return readEntry(given)
}

function entryOf(given: Given): LogEntry {
  const kind = oneOf(given, 'kind', ['contact', 'hours'])
  const fields = Object.keys(given).length
  if (fields !== FIELDS[kind]) {
    throw new Wrong(`it has ${fields} fields; a record of this kind has ${FIELDS[kind]}`)
  }
  return kind === 'contact' ? contactOf(given) : hoursOf(given)
}

const commonOf = (given: Given) => ({
  id: textOf(given, 'id', ID),
  edit: numberOf(given, 'edit', 0, 9999),
  mark: textOf(given, 'mark', MARK),
  date: dayOf(given)
})

function hoursOf(given: Given): VolunteerHours {
  return {
    kind: 'hours',
    ...commonOf(given),
    volunteer: numberOf(given, 'volunteer', 1, 9999),
    minutes: numberOf(given, 'minutes', 1, 1440),
    state: oneOf(given, 'state', ['resolved', 'void'])
  }
}

function contactOf(given: Given): Contact {
  const method = oneOf(given, 'method', METHODS)
  const count = numberOf(given, 'count', 1, 100_000)
  if (count > 1 && method !== 'event') throw new Wrong('`count` is above 1, and this is no event')
  return {
    kind: 'contact',
    ...commonOf(given),
    volunteer: given.volunteer === null ? null : numberOf(given, 'volunteer', 1, 9999),
    ...subjectOf(given),
    ...toldOf(given),
    method,
    direct: flagOf(given, 'direct'),
    count,
    minutes: numberOf(given, 'minutes', 0, 1440),
    language: textOf(given, 'language', LANGUAGE),
    area: given.area === null ? null : textOf(given, 'area', AREA),
    knowHow: given.knowHow === null ? null : nameOf(given, 'knowHow'),
    state: oneOf(given, 'state', CONTACT_STATES),
    review: flagOf(given, 'review')
  }
}

function subjectOf(given: Given): Subject {
  if (given.tree === null) {
    none(given, ['edition', 'fingerprint'], '`tree` is null')
    return {
      tree: null,
      edition: null,
      fingerprint: null,
      topic: oneOf(given, 'topic', OTHER_TOPICS)
    }
  }
  none(given, ['topic'], 'a tree is named')
  return {
    tree: nameOf(given, 'tree'),
    edition: numberOf(given, 'edition', 1, 99_999),
    fingerprint: textOf(given, 'fingerprint', FINGERPRINT),
    topic: null
  }
}

function toldOf(given: Given): WhatWasTold {
  if (flagOf(given, 'referred')) {
    none(given, ['batch', 'container', 'referral'], 'somebody was referred')
    if (flagOf(given, 'sheet')) throw new Wrong('`sheet` is true, and somebody was referred')
    return { referred: true, batch: null, container: null, sheet: false, referral: null }
  }
  const of = <T extends string>(field: string, values: readonly T[]): T | null =>
    given[field] === null ? null : oneOf(given, field, values)
  const [batch, container] = [of('batch', BATCH_VERDICTS), of('container', CONTAINER_VERDICTS)]
  if (given.tree === null && (batch ?? container) !== null) {
    throw new Wrong('a verdict stands beside no tree')
  }
  return {
    referred: false,
    batch,
    container,
    sheet: flagOf(given, 'sheet'),
    referral: of('referral', LOGGED_REFERRALS)
  }
}

function none(given: Given, fields: readonly string[], because: string): void {
  for (const field of fields) {
    if (given[field] !== null) throw new Wrong(`\`${field}\` is not null, and ${because}`)
  }
}

function oneOf<T extends string>(given: Given, field: string, values: readonly T[]): T {
  const value = given[field]
  for (const each of values) if (each === value) return each
  throw new Wrong(`\`${field}\` is none of ${values.join(', ')}`)
}

function textOf(given: Given, field: string, pattern: RegExp): string {
  const value = given[field]
  if (typeof value === 'string' && pattern.test(value)) return value
  throw new Wrong(`\`${field}\` is not written as this log writes it`)
}

function nameOf(given: Given, field: string): string {
  const name = textOf(given, field, NAME)
  if (name.length > LONGEST_NAME) throw new Wrong(`\`${field}\` is too long for a name`)
  return name
}

function numberOf(given: Given, field: string, from: number, to: number): number {
  const value = given[field]
  if (typeof value === 'number' && Number.isInteger(value) && value >= from && value <= to) {
    return value
  }
  throw new Wrong(`\`${field}\` is no whole number from ${from} to ${to}`)
}

function flagOf(given: Given, field: string): boolean {
  const value = given[field]
  if (typeof value === 'boolean') return value
  throw new Wrong(`\`${field}\` is neither true nor false`)
}

/** Days that were found right before: a log has few, and each is asked about thousands of times. */
const names = new Set<string>()

function dayOf({ date }: Given): string {
  if (typeof date === 'string') {
    if (names.has(date)) return date
    if (isDay(date) && date >= '2000' && date < '2100') {
      names.add(date)
      return date
    }
  }
  throw new Wrong('`date` is no day from 2000-01-01 to 2099-12-31')
}
