import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  BATCH_VERDICTS,
  CONTAINER_VERDICTS,
  type Contact,
  lineOf
} from '../../src/contacts/contact.ts'
import { readEntry, readLine } from '../../src/contacts/read-entry.ts'
import { edited, newContact } from '../../src/contacts/stamped.ts'
import { TRACKS } from '../../src/tree/observation.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { CALL, CANNING, contacts, HOURS, REFERRED } from './sample.ts'

const faultOf = (given: unknown) => {
  const read = readEntry(given)
  return 'fault' in read ? read.fault : null
}

describe('an entry holds what its fields can hold and nothing else', () => {
  test('what is written as a line is read again to the letter', () => {
    fc.assert(
      fc.property(contacts, contact => {
        expect(readLine(lineOf(contact))).toEqual({ entry: contact })
      })
    )
    for (const entry of [CALL, CANNING, REFERRED, HOURS]) {
      const read = readLine(lineOf(entry))
      expect('entry' in read && lineOf(read.entry)).toBe(lineOf(entry))
    }
  })

  test.each(['name', 'phone', 'symptom', 'use', 'notes', 'time', 'text'])(
    'a field `%s` is refused, whatever is in it',
    field => {
      expect(faultOf({ ...CALL, [field]: null })).toContain('fields')
      expect(faultOf({ ...HOURS, [field]: 1 })).toContain('fields')
    }
  )

  test('no field takes a sentence, a name, a phone number or an hour', () => {
    const smuggled = ['Maria has blurred vision', 'Ann Smith', '555-0142', '2026-11-02T10:20', ' ']
    for (const entry of [CALL, CANNING, REFERRED, HOURS]) {
      for (const field of Object.keys(entry)) {
        for (const text of smuggled) {
          expect(faultOf({ ...entry, [field]: text }), `${field}: ${text}`).not.toBeNull()
        }
      }
    }
  })

  test('one word where a name of ours belongs must look like one, and be short', () => {
    expect(faultOf({ ...CALL, tree: `a${'-bcdefgh'.repeat(7)}` })).not.toBeNull()
    expect(faultOf({ ...CALL, knowHow: 'Acid' })).not.toBeNull()
    expect(faultOf({ ...CALL, knowHow: 'brine-by-weight' })).toBeNull()
  })

  test.each<[string, object]>([
    ['a batch verdict', { batch: 'likely-mold' }],
    ['a container verdict', { container: 'pressure-hazard' }],
    ['a sheet', { sheet: true }],
    ['a referral', { referral: 'state-specialist' }]
  ])('where somebody was referred, %s is refused beside it', (_, change) => {
    expect(faultOf({ ...REFERRED, ...change })).not.toBeNull()
  })

  test.each(['doctor', 'poison-help', 'emergency', 'health-department', 'office'])(
    'a referral to `%s` cannot be logged: it can follow from what was told of people',
    referral => {
      expect(faultOf({ ...CALL, referral })).not.toBeNull()
    }
  )

  test.each<[string, object]>([
    ['a head count without an event', { count: 2 }],
    ['a day that is none', { date: '2026-02-30' }],
    ['a topic beside a tree', { topic: 'canning' }],
    ['half a minute', { minutes: 1.5 }],
    ['a person verdict', { batch: 'emergency' }]
  ])('%s is refused', (_, change) => {
    expect(faultOf({ ...CALL, ...change })).not.toBeNull()
  })

  test('the verdicts of a log are those of batch and container, and none of a person', async () => {
    const { trees } = await loadShipped()
    const [tree] = trees
    const ids = (track: string) =>
      tree?.verdicts.filter(one => one.track === track).map(({ id }) => id)
    expect(TRACKS).toContain('person')
    expect(ids('batch')).toEqual(BATCH_VERDICTS)
    expect(ids('container')).toEqual(CONTAINER_VERDICTS)
  })
})

describe('what is written anew', () => {
  const facts = ({ kind: _, id: __, edit: ___, mark: ____, ...rest }: Contact) => rest

  test('a practice call makes no record', () => {
    expect(newContact(CALL, true)).toBeNull()
    expect(newContact(CALL, false)).toMatchObject(facts(CALL))
  })

  test('an edit is a later version of the same entry, with a mark of its own', () => {
    const later = edited(CALL, { state: 'pending', minutes: 9 })
    expect(later).toMatchObject({ id: CALL.id, edit: 1, state: 'pending', minutes: 9 })
    expect(later.mark).not.toBe(CALL.mark)
    expect(() => edited(CALL, { minutes: -1 })).toThrow(RangeError)
  })
})
