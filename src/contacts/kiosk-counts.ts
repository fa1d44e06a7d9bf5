import {
  BATCH_VERDICTS,
  CONTAINER_VERDICTS,
  type Contact,
  type Subject,
  type WhatWasTold
} from './contact.ts'
import { newContact } from './stamped.ts'
import { REFERRED } from './what-to-record.ts'

/** How often each thing happened at a kiosk on a day: numbers, and nothing of any one visitor. */
export type KioskCounts = Readonly<Record<string, number>>

/** What a kiosk's counts come to. */
export interface KioskSums {
  readonly finished: number
  /** Visits that ended before an outcome. */
  readonly abandoned: number
  /** The first day counted; null where nothing was. */
  readonly since: string | null
}

export const KIOSK_KEY = 'jarside-kiosk-counts'
const ABANDONED = 'abandoned'
const SENT_ON = 'referred'

/** Counts a visit that came to an outcome. A verdict about a person counts as referred, and as nothing else. */
export function countOutcome(
  counts: KioskCounts,
  date: string,
  language: string,
  { tree, edition, fingerprint }: Subject,
  what: WhatWasTold
): KioskCounts {
  const outcome = what.referred ? SENT_ON : `${what.batch ?? ''}/${what.container ?? ''}`
  return more(counts, [date, language, tree, edition, fingerprint, outcome].join(' '))
}

/** Counts a visit that was left before an outcome. */
export const countAbandoned = (counts: KioskCounts, date: string, language: string): KioskCounts =>
  more(counts, [date, language, ABANDONED].join(' '))

const more = (counts: KioskCounts, line: string): KioskCounts => ({
  ...counts,
  [line]: (counts[line] ?? 0) + 1
})

export function sumsOf(counts: KioskCounts): KioskSums {
  const lines = Object.entries(counts)
  const sum = (of: (line: string) => boolean) =>
    lines.reduce((total, [line, count]) => total + (of(line) ? count : 0), 0)
  const isAbandoned = (line: string) => line.endsWith(` ${ABANDONED}`)
  const days = lines.map(([line]) => line.slice(0, line.indexOf(' '))).sort()
  return {
    finished: sum(line => !isAbandoned(line)),
    abandoned: sum(isAbandoned),
    since: days[0] ?? null
  }
}

/** A line of the counts, and the indirect contact that it comes to; null of visits that were left early. */
export interface CountedContact {
  readonly line: string
  readonly contact: Contact | null
}

export function contactsOf(counts: KioskCounts, area: string | null): readonly CountedContact[] {
  return Object.entries(counts).map(([line, count]) => {
    const [date = '', language = '', tree, edition, fingerprint, outcome] = line.split(' ')
    if (!tree || !edition || !fingerprint || outcome === undefined) return { line, contact: null }
    const [batch, container] = outcome.split('/')
    const standing: WhatWasTold =
      outcome === SENT_ON
        ? REFERRED
        : {
            referred: false,
            batch: BATCH_VERDICTS.find(id => id === batch) ?? null,
            container: CONTAINER_VERDICTS.find(id => id === container) ?? null,
            sheet: false,
            referral: null
          }
    const contact = newContact(
      {
        date,
        volunteer: null,
        tree,
        edition: Number(edition),
        fingerprint,
        topic: null,
        ...standing,
        method: 'event',
        direct: false,
        count,
        minutes: 0,
        language,
        area,
        knowHow: null,
        state: 'resolved',
        review: false
      },
      false
    )
    return { line, contact }
  })
}

/** What this device has counted; nothing where it keeps nothing, or what it keeps makes no sense. */
export function readCounts(): KioskCounts {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KIOSK_KEY) ?? '{}')
    if (typeof kept !== 'object' || kept === null) return {}
    return Object.fromEntries(
      Object.entries(kept).filter(([, count]) => Number.isInteger(count) && count > 0)
    )
  } catch {
    return {}
  }
}

/** Keeps the counts; a device that keeps nothing goes on uncounted. */
export function keepCounts(counts: KioskCounts): void {
  try {
    if (Object.keys(counts).length === 0) localStorage.removeItem(KIOSK_KEY)
    else localStorage.setItem(KIOSK_KEY, JSON.stringify(counts))
  } catch {
    // A full or blocked store: no visitor is bothered with it.
  }
}
