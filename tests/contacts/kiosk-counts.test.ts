import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { lineOf } from '../../src/contacts/contact.ts'
import {
  contactsOf,
  countAbandoned,
  countOutcome,
  type KioskCounts,
  sumsOf
} from '../../src/contacts/kiosk-counts.ts'
import { readLine } from '../../src/contacts/read-entry.ts'
import { subjectOf, toldOfCall } from '../../src/contacts/what-to-record.ts'
import { evaluate } from '../../src/evaluate/evaluate.ts'
import { shippedTrees } from '../helpers/shipped.ts'
import { usualExcept } from '../helpers/usual.ts'

const trees = await shippedTrees()
const [jar] = trees
expect.assert(jar !== undefined)
const DAYS = ['2026-09-30', '2026-10-01', '2026-11-29'] as const

/** Visits as they end: of a sound jar, a moldy one, somebody ill, or left early. */
const visit = fc.record({
  day: fc.constantFrom(...DAYS),
  language: fc.constantFrom('en', 'es'),
  end: fc.constantFrom('sound', 'moldy', 'ill', 'left')
})
const told = {
  sound: toldOfCall(evaluate(jar, usualExcept(jar, {}))),
  moldy: toldOfCall(evaluate(jar, usualExcept(jar, { 'surface-texture': 'dry-fuzzy' }))),
  ill: toldOfCall(evaluate(jar, usualExcept(jar, { 'people-signs': { 'severe-symptoms': 'yes' } })))
}

describe('what a kiosk counts', () => {
  test('comes out as indirect contacts, every outcome once, and nobody left early among them', () => {
    fc.assert(
      fc.property(fc.array(visit, { maxLength: 60 }), visits => {
        const counts = visits.reduce<KioskCounts>(
          (so, { day, language, end }) =>
            end === 'left'
              ? countAbandoned(so, day, language)
              : countOutcome(so, day, language, subjectOf(jar), told[end]),
          {}
        )
        const finished = visits.filter(({ end }) => end !== 'left')
        expect(sumsOf(counts)).toEqual({
          finished: finished.length,
          abandoned: visits.length - finished.length,
          since: visits.map(({ day }) => day).sort()[0] ?? null
        })
        const contacts = contactsOf(counts, '99001').flatMap(({ contact }) => contact ?? [])
        expect(contacts.reduce((sum, { count }) => sum + count, 0)).toBe(finished.length)
        for (const contact of contacts) {
          expect(contact).toMatchObject({ direct: false, method: 'event', tree: 'kombucha-jar' })
          expect(readLine(lineOf(contact))).toHaveProperty('entry')
        }
        const of = (end: string) => finished.filter(each => each.end === end).length
        const counted = (which: (contact: (typeof contacts)[number]) => boolean) =>
          contacts.filter(which).reduce((sum, { count }) => sum + count, 0)
        expect(counted(({ batch }) => batch === 'likely-mold')).toBe(of('moldy'))
        expect(counted(({ referred }) => referred)).toBe(of('ill'))
      }),
      { numRuns: 80 }
    )
  })

  test('of somebody who is ill says only that there was somebody to refer', () => {
    const counts = countOutcome({}, '2026-11-29', 'en', subjectOf(jar), told.ill)
    expect(Object.keys(counts)).toEqual([
      `2026-11-29 en kombucha-jar 1 ${subjectOf(jar).fingerprint} referred`
    ])
  })
})
