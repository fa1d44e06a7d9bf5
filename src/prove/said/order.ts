import { TRACKS, type Track } from '../../tree/observation.ts'
import { callUrgency } from '../../tree/urgency.ts'
import type { Occasion } from './occasion.ts'
import type { SaidDiagrams, StepSpot } from './said.ts'

/** One after the other, as every form says them. */
const LISTS: readonly StepSpot['list'][] = ['do-now', 'clean', 'keep', 'start-again']

/** Where the one step is said, and at each place where it is the other has been said already. */
export function comesLate(
  { occasion, spots }: SaidDiagrams,
  one: readonly StepSpot[],
  other: readonly StepSpot[]
): number {
  const { facts } = occasion
  const said = facts.or(...one.map(({ where }) => where))
  const before = (later: StepSpot, spot: StepSpot) =>
    facts.and(later.where, comesBefore(occasion, spots, later, spot))
  return facts.or(
    ...other.map(later =>
      facts.and(
        said,
        later.where,
        ...one.map(spot => facts.or(facts.not(spot.where), before(later, spot)))
      )
    )
  )
}

/** Where, if both are said, the spot of one step stands before that of another. */
function comesBefore(
  occasion: Occasion,
  spots: readonly StepSpot[],
  one: StepSpot,
  other: StepSpot
): number {
  const { facts, compiled } = occasion
  const stop = ({ step }: StepSpot) =>
    compiled.tree.advice.does[step]?.stops === true ? callUrgency(compiled.tree, step) : null
  const [oneStops, otherStops] = [stop(one), stop(other)]
  if (oneStops === null && otherStops !== null) return urgentBy(occasion, one.track, otherStops)
  if (oneStops !== null && otherStops === null) {
    return facts.not(urgentBy(occasion, other.track, oneStops))
  }
  if (one.list !== other.list) return LISTS.indexOf(one.list) < LISTS.indexOf(other.list) ? 1 : 0
  // What can wait is said after the rest of what is to be done.
  const waits = ({ step }: StepSpot) => compiled.tree.advice.does[step]?.later === true
  if (one.list === 'do-now' && waits(one) !== waits(other)) return waits(other) ? 1 : 0
  if (oneStops !== null || one.track === other.track) {
    return spots.indexOf(one) < spots.indexOf(other) ? 1 : 0
  }
  const ranks = compiled.tree.advice.urgency.map((_, rank) => rank)
  const sooner = ranks.map(rank =>
    facts.without(urgentBy(occasion, one.track, rank), urgentBy(occasion, other.track, rank))
  )
  if (TRACKS.indexOf(one.track) > TRACKS.indexOf(other.track)) return facts.or(...sooner)
  const later = ranks.map(rank =>
    facts.without(urgentBy(occasion, other.track, rank), urgentBy(occasion, one.track, rank))
  )
  return facts.not(facts.or(...later))
}

/** Where a track's verdict is at least as urgent as that. */
function urgentBy({ facts, compiled, spokenAt }: Occasion, track: Track, rank: number): number {
  const verdicts = compiled.tree.advice.urgency.slice(0, rank + 1)
  return facts.or(...verdicts.map(verdict => spokenAt(track, verdict)))
}
