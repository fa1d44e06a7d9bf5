import type { OfficeNumber, OfficePack } from './office-pack.ts'

const DAY = 86_400_000
const LONGEST = 365

/** Whether a number was verified more than 365 days before today, or nobody says when it was. */
export function isStale(number: Pick<OfficeNumber, 'verifiedOn'>, today: Date): boolean {
  const verified = Date.parse(number.verifiedOn)
  // Written so that an unreadable day is stale: NaN fails every comparison.
  return !(today.getTime() - verified <= (LONGEST + 1) * DAY - 1)
}

/** Whether today is past the last day on which the pack may be trusted. */
export function isExpired(pack: Pick<OfficePack, 'validUntil'>, today: Date): boolean {
  return !(today.getTime() < Date.parse(pack.validUntil) + DAY)
}
