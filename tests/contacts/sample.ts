import fc from 'fast-check'
import {
  BATCH_VERDICTS,
  CONTAINER_VERDICTS,
  type Contact,
  LOGGED_REFERRALS,
  METHODS,
  OTHER_TOPICS,
  type VolunteerHours
} from '../../src/contacts/contact.ts'

/** An ordinary call about a jar. */
export const CALL = {
  kind: 'contact',
  id: '0b0a5d1e-7c1f-4f2a-9d7e-2a61c0a6f001',
  edit: 0,
  mark: '00c0ffee',
  date: '2026-11-02',
  volunteer: 7,
  tree: 'kombucha-jar',
  edition: 1,
  fingerprint: '0123456789ab',
  topic: null,
  referred: false,
  batch: 'likely-mold',
  container: null,
  sheet: true,
  referral: null,
  method: 'phone',
  direct: true,
  count: 1,
  minutes: 4,
  language: 'en',
  area: '99001',
  knowHow: null,
  state: 'resolved',
  review: false
} satisfies Contact

/** A call about something that no tree is about. */
export const CANNING = {
  ...CALL,
  id: '0b0a5d1e-7c1f-4f2a-9d7e-2a61c0a6f002',
  tree: null,
  edition: null,
  fingerprint: null,
  topic: 'canning',
  batch: null,
  container: null,
  referred: false,
  sheet: false,
  referral: 'state-specialist'
} satisfies Contact

/** A call that ended with a person sent to get help. */
export const REFERRED = {
  ...CALL,
  id: '0b0a5d1e-7c1f-4f2a-9d7e-2a61c0a6f003',
  referred: true,
  batch: null,
  container: null,
  sheet: false,
  referral: null
} satisfies Contact

export const HOURS: VolunteerHours = {
  kind: 'hours',
  id: '0b0a5d1e-7c1f-4f2a-9d7e-2a61c0a6f004',
  edit: 0,
  mark: '0badcafe',
  date: '2026-11-02',
  volunteer: 7,
  minutes: 150,
  state: 'resolved'
}

/** As a random mark would be, another one for everything else that is told. */
const markOf = (told: unknown): string => {
  let hash = 0x811c9dc5
  for (const sign of JSON.stringify(told)) {
    hash = Math.imul(hash ^ (sign.codePointAt(0) ?? 0), 0x01000193) >>> 0
  }
  return hash.toString(16).padStart(8, '0')
}
const days = fc
  .integer({ min: 0, max: 800 })
  .map(n => new Date(Date.UTC(2025, 0, 1 + n)).toISOString().slice(0, 10))

/** Contacts with few ids, so that versions of one entry meet. */
export const contacts: fc.Arbitrary<Contact> = fc
  .record({
    base: fc.constantFrom(CALL, CANNING, REFERRED),
    id: fc.integer({ min: 0, max: 6 }),
    edit: fc.integer({ min: 0, max: 2 }),
    date: days,
    method: fc.constantFrom(...METHODS),
    heads: fc.integer({ min: 1, max: 40 }),
    minutes: fc.integer({ min: 0, max: 90 }),
    area: fc.constantFrom('99001', '555', null),
    language: fc.constantFrom('en', 'es', 'vi'),
    topic: fc.constantFrom(...OTHER_TOPICS),
    batch: fc.constantFrom(...BATCH_VERDICTS, null),
    container: fc.constantFrom(...CONTAINER_VERDICTS, null),
    referral: fc.constantFrom(...LOGGED_REFERRALS, null),
    direct: fc.boolean(),
    state: fc.constantFrom('resolved', 'pending', 'void')
  })
  .map(({ base, id, heads, topic, batch, container, referral, ...rest }): Contact => {
    const shared = {
      ...rest,
      mark: markOf([base.id, rest, heads, topic, batch, container, referral]),
      id: `0b0a5d1e-7c1f-4f2a-9d7e-2a61c0a6f${100 + id}`,
      count: rest.method === 'event' ? heads : 1
    }
    if (base.referred) return { ...base, ...shared }
    if (base.tree === null) return { ...base, ...shared, topic, referral }
    return { ...base, ...shared, batch, container, referral }
  })
