import type { Outcome } from './caution.ts'
import { TRACKS, type Track } from './observation.ts'
import type { Tree } from './tree.ts'

type Advised = Pick<Tree, 'advice'>

/** How urgent a verdict is: 0 for what is said before all else; the same last place for all that have none. */
export function verdictUrgency({ advice }: Advised, verdict: string | null): number {
  const place = advice.urgency.indexOf(verdict ?? '')
  return place < 0 ? advice.urgency.length : place
}

/** The tracks in the order in which they are spoken of: the most urgent first, a person first where equal. */
export function tracksByUrgency(tree: Advised, outcome: Outcome): readonly Track[] {
  const rank = (track: Track) => verdictUrgency(tree, outcome[track])
  return [...TRACKS].sort((a, b) => rank(a) - rank(b))
}

/**
 * How urgent a step's call is: as urgent as the verdict that has it made by the same time. Null for a
 * step that makes none, or one that can wait for something to go wrong.
 */
export function callUrgency({ advice }: Advised, step: string): number | null {
  const calls = datedCalls({ advice }, step)
  const ranks = advice.urgency.flatMap((verdict, rank) => {
    const makes = (advice.verdicts[verdict]?.doNow ?? []).flatMap(own =>
      datedCalls({ advice }, own)
    )
    return calls.some(call => makes.includes(call)) ? [rank] : []
  })
  return ranks[0] ?? null
}

function datedCalls({ advice }: Advised, step: string): readonly string[] {
  return Object.entries(advice.does[step]?.call ?? {})
    .filter(([, when]) => when === 'now' || when === 'today' || when === 'this-week')
    .map(([whom, when]) => `${whom} ${when}`)
}

/** What is said first, and the rest: the most urgent first. */
export function spoken(tree: Advised, outcome: Outcome): readonly string[] {
  return tracksByUrgency(tree, outcome).flatMap(track => outcome[track] ?? [])
}
