import { type Answers, measureOf } from './answers.ts'
import type { Recheck } from './tree.ts'

interface Names {
  readonly recheck?: Recheck
}

/**
 * The soonest of the rechecks that the notes name; where none of them names one, the verdicts' own.
 * A day of the ferment counts from today's day, and after every hour when that is not known.
 */
export function soonestRecheck(
  notes: readonly Names[],
  verdicts: readonly Names[],
  answers: Answers
): Recheck | null {
  const day = measureOf(answers, 'day')
  const today = typeof day === 'object' ? day.reading : null
  const hoursUntil = (recheck: Recheck) => {
    if ('hours' in recheck) return recheck.hours[1]
    return today === null ? Number.MAX_VALUE : (recheck.day - today) * 24
  }
  const named = (parts: readonly Names[]) => parts.flatMap(({ recheck }) => recheck ?? [])
  const all = named(notes).length > 0 ? named(notes) : named(verdicts)
  return [...all].sort((a, b) => hoursUntil(a) - hoursUntil(b))[0] ?? null
}
