import { type Does, leavesAlone } from '../tree/does.ts'
import type { Tree } from '../tree/tree.ts'

/** How many steps stand under "do now" as a rule. */
export const USUAL_FIRST = 5
/** More than these nobody takes in at once, whatever is urgent. */
export const MOST_FIRST = 8

/** The steps of an outcome in two parts, each in the order in which they are done. */
export interface Parted {
  readonly first: readonly string[]
  readonly later: readonly string[]
}

/**
 * Parts the steps of an outcome into those that stand under "do now" and those said after them: what
 * cannot wait is always among the first, then as many others as there is room for.
 */
export function parted(
  { advice }: Pick<Tree, 'advice'>,
  steps: readonly string[],
  usual = USUAL_FIRST
): Parted {
  const waits = (step: string) => advice.does[step]?.later === true
  // Whoever keeps away from a jar has none of it: there it need not be among the first.
  const keptOff = steps.some(step => leavesAlone(advice.does[step]))
  const forbidding = keptOff ? undefined : steps.find(step => forbids(advice.does[step]))
  const pressing = steps
    .filter(step => step === forbidding || cannotWait(advice.does[step]))
    .slice(0, MOST_FIRST)
  // What can wait comes last; else the order stays: nothing is opened before it is chilled.
  const ordered = [...steps.filter(step => !waits(step)), ...steps.filter(waits)]
  const room = Math.max(0, usual - pressing.length)
  const others = ordered.filter(step => !pressing.includes(step)).slice(0, room)
  const isFirst = (step: string) => pressing.includes(step) || others.includes(step)
  return { first: ordered.filter(isFirst), later: ordered.filter(step => !isFirst(step)) }
}

/** Whether nobody is to have any: said once, it need not be said again at once. */
export const forbids = (does: Does | undefined): boolean => does?.use === 'none'

/** Whether a step calls somebody now or today, asks how everybody is, keeps everybody off, or stops all other steps. */
export function cannotWait(does: Does | undefined): boolean {
  if (does === undefined) return false
  const { ask, call = {}, stops } = does
  return (
    Object.values(call).includes('now') ||
    call.doctor === 'today' ||
    stops === true ||
    ask === 'who' ||
    leavesAlone(does)
  )
}
