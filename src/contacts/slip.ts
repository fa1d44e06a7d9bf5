import { isDay, PHONE } from '../office/plain-text.ts'
import { dayAfter } from './day-span.ts'

/** When a caller likes to be called. */
export const PARTS_OF_DAY = ['any-time', 'morning', 'afternoon', 'evening'] as const
export type PartOfDay = (typeof PARTS_OF_DAY)[number]

/**
 * A slip to call somebody back. It says nothing of what was asked or answered, has no tie to a record, and
 * is in no export: it lies in a store of its own until the call is made.
 */
export interface CallBackSlip {
  readonly id: string
  readonly firstName: string
  readonly phone: string
  /** The day of the call, YYYY-MM-DD. */
  readonly on: string
  readonly part: PartOfDay
  /** The day on which the caller looks at the jar again; null where there is none. */
  readonly recheckOn: string | null
}

/** What is typed on a slip. */
export type SlipFacts = Omit<CallBackSlip, 'id'>

/** How long a slip outlives the day that it was for. */
const DAYS_LEFT = 3
const LONGEST_NAME = 40

/** The fields of a slip that cannot be kept as typed; none where it can. */
export function slipFaults({
  firstName,
  phone,
  on,
  recheckOn
}: SlipFacts): readonly (keyof SlipFacts)[] {
  const name = firstName.trim()
  return [
    ...(name === '' || name.length > LONGEST_NAME ? (['firstName'] as const) : []),
    ...(PHONE.test(phone.trim()) ? [] : (['phone'] as const)),
    ...(isDay(on) ? [] : (['on'] as const)),
    ...(recheckOn === null || isDay(recheckOn) ? [] : (['recheckOn'] as const))
  ]
}

export const newSlip = (facts: SlipFacts): CallBackSlip => ({
  ...facts,
  firstName: facts.firstName.trim(),
  phone: facts.phone.trim(),
  id: crypto.randomUUID()
})

/** The last day on which a slip may lie there. */
export const lastDayOf = ({ on, recheckOn }: SlipFacts): string =>
  dayAfter(recheckOn !== null && recheckOn > on ? recheckOn : on, DAYS_LEFT)

/** Whether a slip has to be gone. */
export const isOver = (slip: SlipFacts, today: string): boolean => lastDayOf(slip) < today

/** The slips to be called today, or that should have been before; those of the morning first. */
export const dueOn = (slips: readonly CallBackSlip[], today: string): readonly CallBackSlip[] =>
  slips
    .filter(slip => slip.on <= today && !isOver(slip, today))
    .sort((a, b) => order(a) - order(b) || (a.on < b.on ? -1 : 1))

const order = ({ part }: CallBackSlip): number => PARTS_OF_DAY.indexOf(part)
