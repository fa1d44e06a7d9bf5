import { cannotWait, forbids, MOST_FIRST } from '../../evaluate/first-steps.ts'
import { found } from '../found.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'
import { refutation } from '../said/refuted.ts'
import { saidOf } from '../said/said.ts'

/**
 * Under "do now" there is room for all that cannot wait, and none of it is marked as what can. Counted by
 * the steps that cannot.
 */
export const whatCannotWaitIsNotPutOff: Property = {
  id: 'what-cannot-wait-is-not-put-off',
  kind: 'law',
  needsWalks: true,
  prove(compiled, places) {
    const said = saidOf(compiled.tree)
    const { does } = compiled.tree.advice
    const spots = said.spots.filter(({ list }) => list === 'do-now')
    const named = [...new Set(spots.map(({ step }) => step))]
    const steps = named.filter(step => cannotWait(does[step]))
    const forbidding = named.filter(step => forbids(does[step]) && !cannotWait(does[step]))
    const { facts } = said.occasion
    const { diagrams } = said.compiled
    const where = (any: readonly string[]) =>
      facts.or(...spots.filter(({ step }) => any.includes(step)).map(spot => spot.where))
    // Nobody is to have any: one of the steps that say so stands there, whichever it is.
    const count = [...steps.map(step => [step]), forbidding].reduce(
      (sum, any) => diagrams.combine([sum, where(any)], ([so = 0, more = 0]) => so + more),
      0
    )
    const tooMany = facts.where(count, level => level > MOST_FIRST)
    return standing(this.id, this.kind, [
      refutation(said, tooMany, 'too-much-at-once', places[`deeds/steps/${steps[0]}`], {
        most: MOST_FIRST
      }),
      ...[...steps, ...forbidding].map(step =>
        does[step]?.later === true
          ? [found('put-off', places[`deeds/steps/${step}`], { step })]
          : []
      )
    ])
  }
}
