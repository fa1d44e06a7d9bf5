import type { Jar } from '../helpers/jars.mjs'

/** What happens in a call, in order; the questions that are left are answered as the jar is. */
export type CallStep =
  /** A line typed into the field, and how many facts stand on the strip after it. */
  | { readonly say: string; readonly facts: number }
  /** The language that the caller turns out to speak. */
  | { readonly speaks: string }
  /** The questions that the sheet offers for what the caller named. */
  | { readonly changeTo: string }
  /** The page is lost, and the call is taken up again with so many facts. */
  | { readonly crash: true; readonly facts: number }
  /** Recorded where it stands, and the next call begun. */
  | { readonly recordAnd: 'next-call' }

/** What comes out: the verdicts from the most urgent on, and the use; null where nobody asks. */
export interface CallOutcome {
  readonly verdicts: readonly string[]
  readonly use: 'as-directed' | 'not-yet' | 'never' | null
}

/** A whole call, as somebody at the desk lives it. */
export interface DeskCall {
  /** The row of the guidance that it is about: its tree, and its title. */
  readonly row: readonly [tree: string, title: string]
  /** The caller tells three facts or more before anything is asked. */
  readonly volunteers?: true
  readonly steps: readonly CallStep[]
  /** What is true of it, for every question that may be asked. */
  readonly told: Jar
  readonly comesTo: CallOutcome
  /** Pressed in the record between F2 and Enter. */
  readonly marks?: readonly string[]
  /** What each record holds of what was decided; the rest of its fields is the same in every call. */
  readonly records: readonly Readonly<Record<string, unknown>>[]
  /** A slip is written, with a recheck in so many days. */
  readonly slipInDays?: number
}

/** A record in which somebody was sent for help, and nothing else. */
const SENT_ON = { referred: true, batch: null, container: null, sheet: false, referral: null }
const phone = { method: 'phone', direct: true, language: 'en', state: 'resolved', review: false }

const well: Jar = {
  'people-signs': 'none',
  'container-signs': 'none',
  'jar-signs': 'none',
  drinkers: 'none'
}
const ordinary: Jar = {
  ...well,
  'surface-texture': 'wet-film',
  'spots-and-color': 'plain-color',
  'smell-and-liquid': 'none',
  'looked-before': 'first-look',
  'jar-ph': ['3.2', 'meter'],
  day: ['9']
}
const brine: Jar = {
  ...well,
  'lid-and-glass': 'none',
  'jar-story': 'none',
  'brine-signs': 'none',
  'brine-color': 'usual-color',
  'ferment-warmth': 'seventy-to-eighty',
  'kimchi-start': 'warm-first',
  'salt-share': ['2.4'],
  'brine-smell': 'none',
  'looked-before': 'first-look'
}

export const CALLS: Readonly<Record<string, DeskCall>> = {
  'facts in any order': {
    row: ['kombucha-jar', '1.17 as sour as a finished brew is'],
    volunteers: true,
    steps: [{ say: 'pH 3.0 by meter, one wet skin on top, it is day 9', facts: 3 }],
    told: { ...ordinary, 'jar-ph': ['3', 'meter'] },
    comesTo: { verdicts: ['normal-growth'], use: 'as-directed' },
    records: [{ ...phone, tree: 'kombucha-jar', referred: false, batch: 'normal-growth' }]
  },
  'a changed mind': {
    row: ['kombucha-jar', '2.19 white cotton tufts'],
    steps: [
      { say: 'day 9, jelly', facts: 2 },
      { say: 'no wait, it is not jelly, it is hairy', facts: 2 },
      { say: 'sorry, day 12', facts: 2 }
    ],
    told: { ...well, 'surface-texture': 'dry-fuzzy', day: ['12'] },
    comesTo: { verdicts: ['likely-mold'], use: 'never' },
    records: [{ ...phone, tree: 'kombucha-jar', referred: false, batch: 'likely-mold' }]
  },
  'a contradiction': {
    row: ['kombucha-jar', '3.1 fur over a very sour brew'],
    volunteers: true,
    steps: [
      { say: 'hairy, pH 3.0 meter, day 9', facts: 3 },
      { say: 'jelly', facts: 4 }
    ],
    told: { ...ordinary, 'surface-texture': 'dry-fuzzy', 'jar-ph': ['3', 'meter'] },
    comesTo: { verdicts: ['likely-mold'], use: 'never' },
    records: [{ ...phone, tree: 'kombucha-jar', referred: false, batch: 'likely-mold' }]
  },
  'an interpreter': {
    row: ['kombucha-jar', '2.6 brown strings hanging down'],
    volunteers: true,
    steps: [{ speaks: 'es' }, { say: 'hilos cafés, día 9, pH 3.2 medidor', facts: 3 }],
    told: { ...ordinary, 'surface-texture': 'strands-or-sediment' },
    comesTo: { verdicts: ['yeast-strands'], use: 'as-directed' },
    records: [{ ...phone, tree: 'kombucha-jar', batch: 'yeast-strands', language: 'es' }]
  },
  'a crash in the middle': {
    row: ['kombucha-jar', '4.12 higher risk, drank mold'],
    volunteers: true,
    steps: [
      { say: 'hairy, day 9, grandmother drank it', facts: 3 },
      { crash: true, facts: 2 }
    ],
    told: { ...well, 'surface-texture': 'dry-fuzzy', drinkers: ['at-risk-drank'] },
    comesTo: { verdicts: ['poison-help', 'likely-mold'], use: 'never' },
    records: [{ ...phone, tree: 'kombucha-jar', ...SENT_ON }]
  },
  'a recheck': {
    row: ['kombucha-jar', '2.17 a flat wrinkled film, seen once'],
    volunteers: true,
    steps: [{ say: 'flat wrinkled film, pH 3.2 meter, day 9', facts: 3 }],
    told: { ...ordinary, 'surface-texture': 'flat-wrinkled-film' },
    comesTo: { verdicts: ['wait-and-recheck'], use: 'not-yet' },
    records: [{ ...phone, tree: 'kombucha-jar', batch: 'wait-and-recheck' }],
    slipInDays: 2
  },
  'handed to the specialist': {
    row: ['brined-vegetables', '2.4 oysters in it'],
    steps: [
      { say: 'my kimchi has raw oysters in it', facts: 0 },
      { changeTo: 'brined-vegetables' }
    ],
    told: {
      ...brine,
      'brine-kind': 'kimchi',
      'jar-story': ['raw-meat-or-seafood'],
      'surface-growth': 'nothing-on-top',
      'brine-ph': ['3.8', 'meter'],
      'days-in-brine': ['35']
    },
    comesTo: { verdicts: ['ask-specialist'], use: 'not-yet' },
    marks: ['pending'],
    records: [
      {
        ...phone,
        tree: 'brined-vegetables',
        batch: 'ask-specialist',
        referral: 'state-specialist',
        state: 'pending'
      }
    ]
  },
  'an emergency, then the jar': {
    row: ['kombucha-jar', '4.9 blood, or a high fever'],
    steps: [
      { say: 'he has trouble breathing', facts: 0 },
      { recordAnd: 'next-call' },
      { say: 'day 9, pH 3.2 meter', facts: 2 }
    ],
    told: { ...ordinary, 'people-signs': ['illness-signs'], drinkers: ['someone-drank'] },
    comesTo: { verdicts: ['doctor-today', 'ask-specialist'], use: 'never' },
    records: [
      { ...phone, tree: 'kombucha-jar', ...SENT_ON },
      { ...phone, tree: 'kombucha-jar', ...SENT_ON }
    ]
  },
  'the wrong ferment': {
    row: ['brined-vegetables', '2.3 a thin white skin'],
    volunteers: true,
    steps: [
      { say: 'thin white film on my sauerkraut, day 35, pH 3.4 meter', facts: 2 },
      { changeTo: 'brined-vegetables' }
    ],
    told: {
      ...brine,
      'brine-kind': 'sauerkraut',
      'surface-growth': 'flat-film',
      'film-history': 'thin-and-new',
      'brine-ph': ['3.4', 'meter'],
      'days-in-brine': ['35']
    },
    comesTo: { verdicts: ['yeast-strands'], use: 'as-directed' },
    records: [{ ...phone, tree: 'brined-vegetables', batch: 'yeast-strands' }]
  },
  'canning, which is beyond us': {
    row: ['outside-this-tool', '1.1 a canned jar that shows nothing'],
    steps: [{ say: 'home canned green beans', facts: 0 }, { changeTo: 'outside-this-tool' }],
    told: {
      ...well,
      'outside-kind': 'canned-jar',
      'closed-jar-signs': 'none',
      'packed-look': 'looks-as-made'
    },
    comesTo: { verdicts: ['ask-specialist'], use: 'not-yet' },
    records: [
      {
        ...phone,
        tree: 'outside-this-tool',
        batch: 'ask-specialist',
        referral: 'state-specialist'
      }
    ]
  }
}
