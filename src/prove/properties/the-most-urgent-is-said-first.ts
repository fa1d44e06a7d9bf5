import { must } from '../../tree/must.ts'
import { callUrgency } from '../../tree/urgency.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'
import { comesLate } from '../said/order.ts'
import { refutation } from '../said/refuted.ts'
import { type StepSpot, saidOf } from '../said/said.ts'

/**
 * No call that can wait is said before one that is more urgent: each is as urgent as the verdict that
 * makes it. Counted by the pairs of steps that make two such calls.
 */
export const theMostUrgentIsSaidFirst: Property = {
  id: 'the-most-urgent-is-said-first',
  kind: 'law',
  needsWalks: true,
  prove(compiled, places) {
    const said = saidOf(compiled.tree)
    const urgency = (step: string) => callUrgency(compiled.tree, step)
    const calling = new Map<string, StepSpot[]>()
    for (const spot of said.spots) {
      if (spot.list !== 'do-now' || urgency(spot.step) === null) continue
      calling.set(spot.step, [...(calling.get(spot.step) ?? []), spot])
    }
    const steps = [...calling.keys()]
    const pairs = steps.flatMap(first =>
      steps
        .filter(later => must(urgency(first), 'urgency') < must(urgency(later), 'urgency'))
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
