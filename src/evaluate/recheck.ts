import { type Answers, measureOf } from '../tree/answers.ts'
import type { Recheck, Tree } from '../tree/tree.ts'

interface Names {
  readonly recheck?: Recheck
}

/** Look again today: what a recheck on a day that has come amounts to. */
const TODAY: Recheck = { hours: [0, 24] }

/**
 * The soonest of the rechecks that the notes name; where none of them names one, the verdicts' own.
 * A day of the ferment counts from today's day, as the tree's own counting observation tells it; a day
 * that has come is today, and one of a ferment whose day nobody knows comes after every hour.
 */
export function soonestRecheck(
  tree: Tree,
  notes: readonly Names[],
  verdicts: readonly Names[],
  answers: Answers
): Recheck | null {
  const day = tree.countsDays === undefined ? undefined : measureOf(answers, tree.countsDays)
  // Of two counts told the later: what it makes due is looked at soonest.
  const today = typeof day === 'object' ? day.high : null
  const due = (recheck: Recheck): Recheck =>
    'day' in recheck && today !== null && recheck.day <= today ? TODAY : recheck
  const hoursUntil = (recheck: Recheck) => {
    if ('hours' in recheck) return recheck.hours[1]
    return today === null ? Number.MAX_VALUE : (recheck.day - today) * 24
  }
  const named = (parts: readonly Names[]) => parts.flatMap(({ recheck }) => recheck ?? [])
  const all = named(notes).length > 0 ? named(notes) : named(verdicts)
  return [...all].map(due).sort((a, b) => hoursUntil(a) - hoursUntil(b))[0] ?? null
}
