import { DAY_MS } from '../science/days.ts'
import type { OfficeNumber } from './office-pack.ts'

const LONGEST = 365

/** Whether a number was verified more than 365 days before today, or nobody says when it was. */
export function isStale(number: Pick<OfficeNumber, 'verifiedOn'>, today: Date): boolean {
  const verified = Date.parse(number.verifiedOn)
  // Written so that an unreadable day is stale: NaN fails every comparison.
  return !(today.getTime() - verified <= (LONGEST + 1) * DAY_MS - 1)
}

/** Whether a day written YYYY-MM-DD is over. An unreadable one is: nobody can vouch for it. */
export function isPast(day: string, today: Date): boolean {
  return !(today.getTime() < Date.parse(day) + DAY_MS)
}
