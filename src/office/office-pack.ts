import type { LocalText } from './local-text.ts'

/** One office's name, hours, phone numbers, referral chain and notices, as this installation keeps them. */
export interface OfficePack {
  readonly office: { readonly name: string | null; readonly county: string | null }
  /** Chooses the emergency and poison numbers, which no pack can replace. */
  readonly country: string
  /** Where the public finds this installation: printed on sheets, and in their QR codes. */
  readonly address: string | null
  readonly numbers: readonly OfficeNumber[]
  /** Null where they cannot be relied on: nothing is said of who answers now. */
  readonly hours: OfficeHours | null
  /** What the office measures for callers who bring it in. */
  readonly measures: readonly OfficeMeasure[]
  readonly referrals: readonly OfficeReferral[]
  readonly notices: readonly Notice[]
  /** Whom it serves, in its own words, for the foot of sheets; null where it says nothing. */
  readonly nonDiscrimination: LocalText | null
  /** How this office keeps its log of contacts; null where it does not say. */
  readonly log: OfficeLog | null
  /** The last day on which the pack may be trusted, as YYYY-MM-DD; empty where nobody says. */
  readonly validUntil: string
}

/** What an office settles for its log of contacts. */
export interface OfficeLog {
  /** Single records are kept so many months, then only their sums; null: for good. */
  readonly keepMonths: number | null
  /** The counties that callers come from, the office's own first. */
  readonly counties: readonly OfficeCounty[]
}

/** A county by its five digits, two for the state and three for the county. */
export interface OfficeCounty {
  readonly code: string
  readonly name: string
}

/** A phone number, and who last made sure of it on which day. */
export interface OfficeNumber {
  readonly id: string
  readonly label: string
  readonly phone: string
  readonly verifiedOn: string
  readonly owner: string
}

export interface OfficeHours {
  /** An IANA time zone, such as America/Chicago. */
  readonly zone: string
  readonly week: readonly OpenHours[]
  /** Days on which nobody answers, as YYYY-MM-DD. */
  readonly closed: readonly string[]
}

export interface OpenHours {
  readonly days: readonly Weekday[]
  readonly opens: string
  readonly closes: string
}

/** The days of a week as a pack names them. */
export const WEEKDAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const
export type Weekday = (typeof WEEKDAYS)[number]

/** The triggers for which an office names somebody; emergency and poison help are not among them. */
export const OFFICE_TRIGGERS = [
  'doctor',
  'health-department',
  'state-specialist',
  'other-county',
  'regulator',
  'office'
] as const
export type OfficeTrigger = (typeof OFFICE_TRIGGERS)[number]

/** What an office can measure. */
export const OFFICE_MEASURES = ['ph'] as const
export type OfficeMeasure = (typeof OFFICE_MEASURES)[number]

export interface OfficeReferral {
  readonly trigger: OfficeTrigger
  readonly name: LocalText
  /** The id of one of the pack's numbers; none where the caller has the number already. */
  readonly number?: string
  readonly say?: LocalText
}

export interface Notice {
  readonly id: string
  readonly text: LocalText
  readonly from?: string
  readonly until?: string
}
