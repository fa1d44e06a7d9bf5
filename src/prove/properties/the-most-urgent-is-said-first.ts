import { TRACKS, type Track } from '../../tree/observation.ts'
import { callUrgency } from '../../tree/urgency.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'
import type { Occasion } from '../said/occasion.ts'
import { refutation } from '../said/refuted.ts'
import { type Said, type Spot, saidOf } from '../said/said.ts'

/**
 * No call that can wait is said before one that is more urgent: each is as urgent as the verdict that
 * makes it. Counted by the pairs of steps that make two such calls.
 */
export const theMostUrgentIsSaidFirst: Property = {
  id: 'the-most-urgent-is-said-first',
  kind: 'law',
  needsWalks: true,
  prove(made, places) {
    const said = saidOf(made.tree)
    const urgency = (step: string) => callUrgency(made.tree, step)
    const calling = new Map<string, Spot[]>()
    for (const spot of said.spots) {
      if (spot.list !== 'do-now' || urgency(spot.step) === null) continue
      calling.set(spot.step, [...(calling.get(spot.step) ?? []), spot])
    }
    const steps = [...calling.keys()]
    const pairs = steps.flatMap(first =>
      steps
        .filter(later => (urgency(first) as number) < (urgency(later) as number))
        .map(later => ({ first, later }))
    )
    const cases = pairs.map(({ first, later }) => {
      const where = comesLate(said, calling.get(first) ?? [], calling.get(later) ?? [])
      const place = places[`deeds/steps/${first}`]
      return where === 0
        ? []
        : refutation(said, where, 'urgent-comes-late', place, { first, later })
    })
    return standing(this.id, this.kind, cases)
  }
}

/** Where the one step is said, and at each place where it is the other has been said already. */
function comesLate(
  { occasion, spots }: Said,
  one: readonly Spot[],
  other: readonly Spot[]
): number {
  const { facts } = occasion
  const said = facts.or(...one.map(({ where }) => where))
  const before = (later: Spot, spot: Spot) =>
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
function comesBefore(occasion: Occasion, spots: readonly Spot[], one: Spot, other: Spot): number {
  const { facts, made } = occasion
  const stop = ({ step }: Spot) =>
    made.tree.advice.does[step]?.stops === true ? callUrgency(made.tree, step) : null
  const [oneStops, otherStops] = [stop(one), stop(other)]
  if (oneStops === null && otherStops !== null) return urgentBy(occasion, one.track, otherStops)
  if (oneStops !== null && otherStops === null) {
    return facts.not(urgentBy(occasion, other.track, oneStops))
  }
  if (oneStops !== null || one.track === other.track) {
    return spots.indexOf(one) < spots.indexOf(other) ? 1 : 0
  }
  const ranks = made.tree.advice.urgency.map((_, rank) => rank)
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
function urgentBy({ facts, made, spokenAt }: Occasion, track: Track, rank: number): number {
  const verdicts = made.tree.advice.urgency.slice(0, rank + 1)
  return facts.or(...verdicts.map(verdict => spokenAt(track, verdict)))
}
