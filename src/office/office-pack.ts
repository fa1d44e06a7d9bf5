import { type LocalText, readLocalText } from './local-text.ts'
import { asList, asRecord, asText } from './read-json.ts'

/** One office's name, hours, phone numbers, referral chain and notices, as this installation keeps them. */
export interface OfficePack {
  readonly office: { readonly name: string; readonly county: string }
  /** Chooses the emergency and poison numbers, which no pack can replace. */
  readonly country: string
  /** Where the public finds this installation: printed on sheets, and in their QR codes. */
  readonly address: string | null
  readonly numbers: readonly OfficeNumber[]
  readonly hours: OfficeHours
  readonly referrals: readonly OfficeReferral[]
  readonly notices: readonly Notice[]
  /** The last day on which the pack may be trusted, as YYYY-MM-DD. */
  readonly validUntil: string
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

/**
 * Reads an office pack from parsed JSON, or gives null where a part that everything hangs on is missing.
 *
 * An entry that is malformed is left out: a kiosk at a fair must go on with what is right in the pack.
 * So is a referral for an emergency or for poison help, because nothing replaces those two numbers.
 */
export function readOfficePack(authored: unknown): OfficePack | null {
  const pack = asRecord(authored)
  const office = asRecord(pack.office)
  const name = asText(office.name)
  const country = asText(pack.country)
  const validUntil = asText(pack['valid-until'])
  if (!name || !country || !validUntil) return null
  return {
    office: { name, county: asText(office.county) ?? '' },
    country,
    address: webAddress(pack.address),
    numbers: asList(pack.numbers).flatMap(readNumber),
    hours: readHours(pack.hours),
    referrals: asList(pack.referrals).flatMap(readReferral),
    notices: asList(pack.notices).flatMap(readNotice),
    validUntil
  }
}

/** A web address that ends in a slash, so that a fragment can follow; null when it is none. */
function webAddress(authored: unknown): string | null {
  const text = asText(authored)
  return text !== undefined && /^https?:\/\/[^\s#?]+$/.test(text) ? text.replace(/\/?$/, '/') : null
}

function readNumber(authored: unknown): OfficeNumber[] {
  const number = asRecord(authored)
  const id = asText(number.id)
  const phone = asText(number.phone)
  if (!id || !phone) return []
  return [
    {
      id,
      label: asText(number.label) ?? id,
      phone,
      // A number of which nobody says when it was verified counts as never verified.
      verifiedOn: asText(number['verified-on']) ?? '',
      owner: asText(number.owner) ?? ''
    }
  ]
}

function readHours(authored: unknown): OfficeHours {
  const hours = asRecord(authored)
  return {
    zone: asText(hours.zone) ?? 'UTC',
    week: asList(hours.week).flatMap(readOpenHours),
    closed: asList(hours.closed).flatMap(day => asText(day) ?? [])
  }
}

function readOpenHours(authored: unknown): OpenHours[] {
  const hours = asRecord(authored)
  const opens = asText(hours.opens)
  const closes = asText(hours.closes)
  const days = WEEKDAYS.filter(day => asList(hours.days).includes(day))
  return opens && closes ? [{ days, opens, closes }] : []
}

function readReferral(authored: unknown): OfficeReferral[] {
  const referral = asRecord(authored)
  const trigger = OFFICE_TRIGGERS.find(known => known === referral.trigger)
  const name = readLocalText(referral.name)
  if (!trigger || !name) return []
  const number = asText(referral.number)
  const say = readLocalText(referral.say)
  return [{ trigger, name, ...(number && { number }), ...(say && { say }) }]
}

function readNotice(authored: unknown): Notice[] {
  const notice = asRecord(authored)
  const id = asText(notice.id)
  const text = readLocalText(notice.text)
  if (!id || !text) return []
  const from = asText(notice.from)
  const until = asText(notice.until)
  return [{ id, text, ...(from && { from }), ...(until && { until }) }]
}
