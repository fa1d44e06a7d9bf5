import { numbersOf } from './constants.ts'
import type { LocalText } from './local-text.ts'
import type { OfficeHours, OfficeMeasure, OfficePack } from './office-pack.ts'
import { isPast, isStale } from './stale.ts'

/** Whom to call for a trigger, and how far the number can be relied on. */
export interface Referral {
  readonly to: string
  /** The office's own word for whom it names; null where the words of the locale stand alone. */
  readonly name: LocalText | null
  readonly phone: string | null
  readonly say: LocalText | null
  /** `fixed`: a country's number. `missing`: no pack, or it names nobody or no number for this trigger. */
  readonly standing: 'fixed' | 'current' | 'stale' | 'missing'
}

/** Finds whom to call for a trigger; the emergency and poison numbers come from the country alone. */
export function referralFor(pack: OfficePack | null, trigger: string, today: Date): Referral {
  const fixed = numbersOf(pack?.country)
  const phone = { emergency: fixed.emergency, 'poison-help': fixed.poisonHelp }[trigger]
  if (phone) return { to: trigger, name: null, phone, say: null, standing: 'fixed' }

  const referral = pack?.referrals.find(candidate => candidate.trigger === trigger)
  const number = pack?.numbers.find(candidate => candidate.id === referral?.number)
  const line = { to: trigger, name: referral?.name ?? null, say: referral?.say ?? null }
  if (!pack || !referral) return { ...line, phone: null, standing: 'missing' }
  // A doctor's number is the caller's own: nothing is missing and nothing can be out of date.
  if (!referral.number) return { ...line, phone: null, standing: 'current' }
  if (!number) return { ...line, phone: null, standing: 'missing' }
  const stale = isPast(pack.validUntil, today) || isStale(number, today)
  return { ...line, phone: number.phone, standing: stale ? 'stale' : 'current' }
}

/** Where something can be brought in to be measured. */
export interface MeasuringPlace {
  readonly name: string
  readonly phone: string
  /** Null where the pack's hours cannot be relied on: they are asked for by telephone. */
  readonly hours: OfficeHours | null
}

/** The office, where it measures this and its own number can be relied on: nobody drives there for nothing. */
export function measuringPlace(
  pack: OfficePack | null,
  measure: OfficeMeasure,
  today: Date
): MeasuringPlace | null {
  if (!pack?.measures.includes(measure) || pack.office.name === null) return null
  const { phone, standing } = referralFor(pack, 'office', today)
  if (phone === null || standing !== 'current') return null
  return { name: pack.office.name, phone, hours: pack.hours }
}
