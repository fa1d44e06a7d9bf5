import { isKnownCountry } from './constants.ts'
import { type LocalText, readLocalText } from './local-text.ts'
import {
  type Notice,
  OFFICE_MEASURES,
  OFFICE_TRIGGERS,
  type OfficeCounty,
  type OfficeHours,
  type OfficeLog,
  type OfficeNumber,
  type OfficePack,
  type OfficeReferral,
  type OpenHours,
  WEEKDAYS
} from './office-pack.ts'
import { CLOCK, COUNTY_CODE, isDay, isZone, PHONE } from './plain-text.ts'
import { asList, asRecord, asText } from './read-json.ts'

/** A pack as far as it can be used, and what of the file was left out. */
export interface OfficeReading {
  readonly pack: OfficePack | null
  readonly dropped: readonly Dropped[]
}

/** Something of an office's file that is not used, for whoever looks after it. */
export interface Dropped {
  /** Its place in the file: `hours.zone`, `numbers[2].phone`. */
  readonly at: string
  /** In brief, since every caller's device holds it: what an author needs to know `jarside check` says. */
  readonly why: string
}

type Drop = (place: string, why: string) => void

/**
 * Reads an office's file from parsed JSON, field by field. What is wrong is left out and said: a kiosk
 * at a fair must go on with what is right. There is no pack without its country, which decides the
 * numbers for emergencies; nothing in a pack replaces those.
 */
export function readOffice(authored: unknown): OfficeReading {
  const dropped: Dropped[] = []
  const drop: Drop = (place, why) => dropped.push({ at: place, why })
  const file = asRecord(authored)
  const country = asText(file.country)
  if (!isKnownCountry(country)) {
    drop('country', 'no emergency numbers are known for it: the file is left out')
    return { pack: null, dropped }
  }
  const office = asRecord(file.office)
  const validUntil = dayOf(file['valid-until'], 'valid-until', drop)
  if (validUntil === null) drop('valid-until', 'the numbers count as out of date')
  const pack: OfficePack = {
    office: {
      name: textOf(office.name, 'office.name', drop),
      county: textOf(office.county, 'office.county', drop)
    },
    country,
    address: file.address === undefined ? null : webAddress(file.address, drop),
    numbers: each(file.numbers, 'numbers', drop, readNumber),
    hours: readHours(file.hours, drop),
    // What no office measures is found when the file is checked.
    measures: OFFICE_MEASURES.filter(each => asList(file.measures).includes(each)),
    referrals: each(file.referrals, 'referrals', drop, readReferral),
    notices: each(file.notices, 'notices', drop, readNotice),
    nonDiscrimination:
      file['non-discrimination'] === undefined
        ? null
        : localTextOf(file['non-discrimination'], 'non-discrimination', drop),
    log: file.log === undefined ? null : readLog(file.log, drop),
    validUntil: validUntil ?? ''
  }
  return { pack, dropped }
}

/** The pack alone; null where the file is none. */
export const readOfficePack = (authored: unknown): OfficePack | null => readOffice(authored).pack

function each<T>(
  authored: unknown,
  list: string,
  drop: Drop,
  read: (entry: Readonly<Record<string, unknown>>, place: string, drop: Drop) => T | null
): readonly T[] {
  if (!Array.isArray(authored)) drop(list, 'no list')
  return asList(authored).flatMap((entry, index) => {
    const place = `${list}[${index}]`
    const result = read(asRecord(entry), place, drop)
    if (result === null) drop(place, 'left out')
    return result === null ? [] : [result]
  })
}

function textOf(authored: unknown, place: string, drop: Drop): string | null {
  const text = asText(authored)
  if (text === undefined) drop(place, 'no plain text')
  return text ?? null
}

function localTextOf(authored: unknown, place: string, drop: Drop): LocalText | null {
  const { text, wrong } = readLocalText(authored)
  for (const tag of wrong) textOf(null, `${place}.${tag}`, drop)
  if (text === undefined) textOf(null, place, drop)
  return text ?? null
}

function dayOf(authored: unknown, place: string, drop: Drop): string | null {
  const text = asText(authored)
  if (text !== undefined && isDay(text)) return text
  drop(place, 'no day like 2027-10-31')
  return null
}

/** A web address that ends in a slash, so that a fragment can follow. */
function webAddress(authored: unknown, drop: Drop): string | null {
  const text = asText(authored)
  if (text !== undefined && /^https?:\/\/[^\s#?]+$/.test(text) && URL.canParse(text)) {
    return text.replace(/\/?$/, '/')
  }
  drop('address', 'no web address')
  return null
}

function readNumber(
  { id: named, label, phone: digits, 'verified-on': verified, owner }: Record<string, unknown>,
  place: string,
  drop: Drop
): OfficeNumber | null {
  const id = textOf(named, `${place}.id`, drop)
  const phone = asText(digits)
  if (phone === undefined || !PHONE.test(phone)) {
    drop(`${place}.phone`, 'no phone number')
    return null
  }
  if (id === null) return null
  return {
    id,
    label: textOf(label, `${place}.label`, drop) ?? id,
    phone,
    // A number of which nobody says when it was verified counts as never verified.
    verifiedOn: dayOf(verified, `${place}.verified-on`, drop) ?? '',
    owner: textOf(owner, `${place}.owner`, drop) ?? ''
  }
}

/** Hours are told whole or not at all: without a day of theirs they would say "closed" when it is open. */
function readHours(authored: unknown, drop: Drop): OfficeHours | null {
  const { zone: named, week: days, closed: off } = asRecord(authored)
  let whole = true
  const wrong: Drop = (place, why) => {
    whole = false
    drop(place, why)
  }
  const zone = asText(named)
  if (zone === undefined || !isZone(zone)) {
    wrong('hours.zone', 'no time zone')
  }
  const week = each(days, 'hours.week', wrong, readOpenHours)
  const closed = each(
    asList(off).map(day => ({ day })),
    'hours.closed',
    wrong,
    ({ day }, index) => dayOf(day, index, wrong)
  )
  if (!Array.isArray(off)) wrong('hours.closed', 'no list')
  if (whole && zone !== undefined) return { zone, week, closed }
  drop('hours', 'not shown')
  return null
}

function readOpenHours(
  { opens: from, closes: until, days: named }: Record<string, unknown>,
  place: string,
  drop: Drop
): OpenHours | null {
  const [opens = '', closes = ''] = [asText(from), asText(until)]
  const days = WEEKDAYS.filter(day => asList(named).includes(day))
  if (days.length === 0 || days.length !== asList(named).length) {
    drop(`${place}.days`, 'no days')
    return null
  }
  if (CLOCK.test(opens) && CLOCK.test(closes) && opens < closes) return { days, opens, closes }
  drop(place, 'no opening times')
  return null
}

/** A log is kept without what is wrong here: for longer, and without the name of a county. */
function readLog(authored: unknown, drop: Drop): OfficeLog {
  const { 'keep-months': keep, counties } = asRecord(authored)
  const months = typeof keep === 'number' && Number.isInteger(keep) && keep >= 1 && keep <= 240
  if (keep !== undefined && !months) {
    drop('log.keep-months', 'no number from 1 to 240: all records are kept')
  }
  return {
    keepMonths: months ? keep : null,
    counties: counties === undefined ? [] : each(counties, 'log.counties', drop, readCounty)
  }
}

function readCounty(
  { code: digits, name: called }: Record<string, unknown>,
  place: string,
  drop: Drop
): OfficeCounty | null {
  const code = asText(digits)
  if (code === undefined || !COUNTY_CODE.test(code)) {
    drop(`${place}.code`, 'no five digits')
    return null
  }
  const name = textOf(called, `${place}.name`, drop)
  return name === null ? null : { code, name }
}

function readReferral(
  { trigger: named, name: called, number: id, say: text }: Record<string, unknown>,
  place: string,
  drop: Drop
): OfficeReferral | null {
  const trigger = OFFICE_TRIGGERS.find(each => each === named)
  if (trigger === undefined) {
    drop(`${place}.trigger`, 'no trigger of an office')
    return null
  }
  const name = localTextOf(called, `${place}.name`, drop)
  // What is named and cannot be read stays missing: the caller is told that a number is.
  const number = id === undefined ? null : (textOf(id, `${place}.number`, drop) ?? '?')
  const say = text === undefined ? null : localTextOf(text, `${place}.say`, drop)
  if (name === null) return null
  return { trigger, name, ...(number !== null && { number }), ...(say !== null && { say }) }
}

function readNotice(
  { id: named, text: sentence, from: first, until: last }: Record<string, unknown>,
  place: string,
  drop: Drop
): Notice | null {
  const id = textOf(named, `${place}.id`, drop)
  const text = localTextOf(sentence, `${place}.text`, drop)
  const from = first === undefined ? undefined : dayOf(first, `${place}.from`, drop)
  const until = last === undefined ? undefined : dayOf(last, `${place}.until`, drop)
  // Without one of its days it would stand when it must not.
  if (id === null || text === null || from === null || until === null) return null
  return { id, text, ...(from && { from }), ...(until && { until }) }
}
