import { type OfficeHours, type OfficePack, WEEKDAYS, type Weekday } from './office-pack.ts'

/** A moment as the office's wall calendar and clock show it. */
export interface LocalTime {
  /** YYYY-MM-DD */
  readonly date: string
  readonly weekday: Weekday
  /** HH:MM, from 00:00 to 23:59. */
  readonly clock: string
}

/**
 * Reads a moment on the wall clock of a time zone; without one on this device's own.
 *
 * @throws RangeError when the zone is not an IANA time zone: `readOffice` lets none pass.
 */
export function localTime(moment: Date, zone: string | undefined): LocalTime {
  const format = new Intl.DateTimeFormat('en-US', {
    timeZone: zone,
    // Without h23 some engines write midnight as 24:00.
    hourCycle: 'h23',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    weekday: 'short',
    hour: '2-digit',
    minute: '2-digit'
  })
  const part = Object.fromEntries(
    format.formatToParts(moment).map(({ type, value }) => [type, value])
  )
  const name = String(part.weekday).toLowerCase()
  return {
    date: `${part.year}-${part.month}-${part.day}`,
    weekday: WEEKDAYS.find(day => day === name) ?? 'mon',
    clock: `${part.hour}:${part.minute}`
  }
}

/** Whether somebody answers the office's phone at a moment; the closing minute itself is closed. */
export function isOpen(hours: OfficeHours, moment: Date): boolean {
  const { date, weekday, clock } = localTime(moment, hours.zone)
  if (hours.closed.includes(date)) return false
  return hours.week.some(
    ({ days, opens, closes }) => days.includes(weekday) && opens <= clock && clock < closes
  )
}

/** The notices that stand on a moment's date in the office's time zone, both ends included. */
export function noticesAt(pack: OfficePack, moment: Date): OfficePack['notices'] {
  const { date } = localTime(moment, pack.hours?.zone)
  return pack.notices.filter(
    ({ from, until }) => !(from && date < from) && !(until && date > until)
  )
}
