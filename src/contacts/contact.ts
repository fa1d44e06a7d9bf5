/** How somebody reached the office. */
export const METHODS = ['phone', 'call-back', 'walk-in', 'email', 'event'] as const
export type ContactMethod = (typeof METHODS)[number]

/** What is asked that no tree is about. */
export const OTHER_TOPICS = [
  'canning',
  'pickling',
  'jam-and-jelly',
  'freezing',
  'drying',
  'meat-and-fish',
  'storage',
  'equipment',
  'other-topic'
] as const
export type OtherTopic = (typeof OTHER_TOPICS)[number]

/** What a tree may say of a batch and of a container; `shared/verdicts.yaml` has their order. */
export const BATCH_VERDICTS = [
  'normal-growth',
  'quality-only',
  'yeast-strands',
  'wait-and-recheck',
  'ask-specialist',
  'discard-and-sanitize',
  'likely-mold',
  'possible-toxin'
] as const
export type BatchVerdict = (typeof BATCH_VERDICTS)[number]

export const CONTAINER_VERDICTS = ['pressure-caution', 'pressure-hazard'] as const
export type ContainerVerdict = (typeof CONTAINER_VERDICTS)[number]

/**
 * To whom a caller is sent for the sake of the food or of the office's bounds. Doctor, poison help, 911
 * and the health department are not among them: they can follow from what was told of people.
 */
export const LOGGED_REFERRALS = ['state-specialist', 'other-county', 'regulator'] as const
export type LoggedReferral = (typeof LOGGED_REFERRALS)[number]

/** `void`: written by mistake, counted nowhere. */
export const CONTACT_STATES = ['resolved', 'pending', 'void'] as const
export type ContactState = (typeof CONTACT_STATES)[number]

/** What tells one version of an entry from every other. */
export interface Stamp {
  /** A random UUID (RFC 9562, version 4), the same through every edit. */
  readonly id: string
  /** How often it was edited: from 0. */
  readonly edit: number
  /** Eight random hexadecimal digits, drawn anew with each edit: which of two edits counts. */
  readonly mark: string
}

/** What every entry of a log says. There is no hour in it, and no field that takes a sentence. */
interface Common {
  /** The day in the office's time zone, YYYY-MM-DD. */
  readonly date: string
  /** A volunteer's number, 1 to 9999. */
  readonly volunteer: number | null
}

/** What was asked about: a tree as it was when it answered, or another topic. */
export type Subject =
  | {
      readonly tree: string
      /** The published number of the tree. */
      readonly edition: number
      /** The first twelve hexadecimal digits of the tree's fingerprint. */
      readonly fingerprint: string
      readonly topic: null
    }
  | {
      readonly tree: null
      readonly edition: null
      readonly fingerprint: null
      readonly topic: OtherTopic
    }

/**
 * What came out. Where somebody was sent on, which may be for their health, nothing else is told of it: a sheet or a
 * referral could give it away.
 */
export type WhatWasTold =
  | {
      readonly referred: true
      readonly batch: null
      readonly container: null
      readonly sheet: false
      readonly referral: null
    }
  | {
      readonly referred: false
      readonly batch: BatchVerdict | null
      readonly container: ContainerVerdict | null
      readonly sheet: boolean
      readonly referral: LoggedReferral | null
    }

/** What is told of one answered question, or of an event with all who came. */
export type ContactFacts = Common &
  Subject &
  WhatWasTold & {
    readonly method: ContactMethod
    /** Educator and caller linked at the same time for education. */
    readonly direct: boolean
    /** How many people: 1, and of an event the head count, to 100,000. */
    readonly count: number
    /** 0 to 1440. */
    readonly minutes: number
    /** A language by the two or three letters of its BCP 47 tag. */
    readonly language: string
    /** Five digits: a county (as in INCITS 31). Three: the first of a ZIP code. Null: not known. */
    readonly area: string | null
    /** A reviewed answer that was read out. */
    readonly knowHow: string | null
    readonly state: ContactState
    /** The educator should look at it. */
    readonly review: boolean
  }
export type Contact = Stamp & ContactFacts & { readonly kind: 'contact' }

/** Time that a volunteer gave on a day. */
export interface HoursFacts extends Common {
  readonly volunteer: number
  /** 1 to 1440. */
  readonly minutes: number
  readonly state: 'resolved' | 'void'
}
export type VolunteerHours = Stamp & HoursFacts & { readonly kind: 'hours' }

export type LogEntry = Contact | VolunteerHours

/** An entry as one line of a JSON Lines file, its fields always in the same order. */
export const lineOf = (entry: LogEntry): string => JSON.stringify(entry)
