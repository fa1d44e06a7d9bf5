import type { Contact } from '../../src/contacts/contact.ts'
import { dayAfter } from '../../src/contacts/day-span.ts'
import type { LogReport } from '../../src/contacts/log-report.ts'
import { CALL, CANNING, REFERRED } from './sample.ts'

/** How many calls of each kind a made-up office had in the last quarter of 2026, each with what it is. */
const KINDS: readonly (readonly [number, Contact])[] = [
  [60, { ...CALL, batch: 'normal-growth', sheet: false, minutes: 4 }],
  [30, { ...CALL, batch: 'likely-mold', sheet: true, minutes: 5 }],
  [
    20,
    {
      ...CALL,
      tree: 'brined-vegetables',
      batch: 'yeast-strands',
      method: 'call-back',
      language: 'es',
      minutes: 6
    }
  ],
  [
    15,
    {
      ...CALL,
      tree: 'kombucha-bottle',
      batch: 'normal-growth',
      container: 'pressure-hazard',
      area: '99003',
      state: 'pending',
      sheet: false,
      minutes: 7
    }
  ],
  [12, { ...REFERRED, minutes: 3 }],
  [25, { ...CANNING, minutes: 2 }],
  [
    10,
    {
      ...CANNING,
      topic: 'pickling',
      referral: 'other-county',
      method: 'email',
      area: '555',
      sheet: true,
      minutes: 10
    }
  ],
  [
    8,
    {
      ...CALL,
      tree: 'sourdough-starter',
      batch: 'quality-only',
      method: 'walk-in',
      area: null,
      minutes: 8
    }
  ],
  [
    6,
    {
      ...CALL,
      tree: 'wild-sodas',
      batch: 'wait-and-recheck',
      container: 'pressure-caution',
      language: 'vi',
      area: '99005',
      state: 'pending',
      sheet: false,
      minutes: 9
    }
  ],
  [
    1,
    {
      ...CANNING,
      topic: 'other-topic',
      referral: null,
      method: 'event',
      count: 90,
      sheet: true,
      minutes: 120
    }
  ],
  [
    4,
    {
      ...CANNING,
      topic: 'storage',
      referral: null,
      method: 'email',
      direct: false,
      area: '555',
      knowHow: 'brine-by-weight',
      minutes: 1
    }
  ],
  [
    9,
    {
      ...CALL,
      tree: 'milk-and-water-kefir',
      batch: 'ask-specialist',
      referral: 'state-specialist',
      language: 'es',
      area: '99003',
      state: 'pending',
      sheet: false,
      minutes: 11
    }
  ]
]

/** The 200 calls of that quarter, over all of its days. */
export const syntheticCalls = (): readonly Contact[] =>
  KINDS.flatMap(([times, contact]) => Array.from({ length: times }, () => contact)).map(
    (contact, at): Contact => ({
      ...contact,
      id: `0b0a5d1e-7c1f-4f2a-9d7e-${(0xa0_0000_0000 + at * 7919).toString(16).padStart(12, '0')}`,
      mark: at.toString(16).padStart(8, '0'),
      date: dayAfter('2026-10-01', at % 92)
    })
  )

/** Added up by hand from the list above. */
export const HAND_TALLY: LogReport = {
  from: '2026-10-01',
  until: '2026-12-31',
  contacts: 289,
  records: 200,
  minutes: 1142,
  tables: {
    method: { phone: 157, event: 90, 'call-back': 20, email: 14, 'walk-in': 8 },
    reach: { direct: 285, indirect: 4 },
    topic: {
      'kombucha-jar': 102,
      'other-topic': 90,
      canning: 25,
      'brined-vegetables': 20,
      'kombucha-bottle': 15,
      pickling: 10,
      'milk-and-water-kefir': 9,
      'sourdough-starter': 8,
      'wild-sodas': 6,
      storage: 4
    },
    batch: {
      none: 129,
      'normal-growth': 75,
      'likely-mold': 30,
      'yeast-strands': 20,
      referred: 12,
      'ask-specialist': 9,
      'quality-only': 8,
      'wait-and-recheck': 6
    },
    container: { none: 268, 'pressure-hazard': 15, 'pressure-caution': 6 },
    referral: { none: 245, 'state-specialist': 34, 'other-county': 10 },
    language: { en: 254, es: 29, vi: 6 },
    area: { '99001': 237, '99003': 24, '555': 14, unknown: 8, '99005': 6 },
    state: { resolved: 259, pending: 30 },
    sheet: { yes: 158, no: 131 },
    'know-how': { none: 285, 'brine-by-weight': 4 }
  },
  volunteers: {},
  volunteerMinutes: 0
}
