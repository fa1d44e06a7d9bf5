import { verdict, verdictsOf } from '../../tree/caution.ts'
import { reasonsFor } from '../../tree/reasons.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'
import { casesOf } from '../said/cases.ts'
import { saidOf } from '../said/said.ts'

/**
 * Wherever a batch is withheld, a note says why: one of an answer that brought its verdict, or one written
 * to give the reason. Counted by what is asked, for each verdict that withholds.
 */
export const theReasonIsSaid: Property = {
  id: 'the-reason-is-said',
  kind: 'law',
  needsWalks: true,
  prove(compiled, places) {
    const said = saidOf(compiled.tree)
    const { facts, left } = said.occasion
    const { tree } = compiled
    const withheld = verdictsOf(tree, 'batch').filter(
      id =>
        verdict(tree, id).ceiling !== 'as-directed' &&
        tree.advice.verdicts[id]?.tellsWhy !== true &&
        said.occasion.verdict(id) !== 0
    )
    const cases = withheld.flatMap(id => {
      const reasons = reasonsFor(tree, id)
      const given = said.sentences.filter(one => one.kind === 'note' && reasons.has(one.id))
      // Nobody is told more of a batch that nobody goes back to.
      const spoken = facts.without(said.occasion.verdict(id), left)
      const without = facts.without(spoken, facts.or(...given.map(one => one.said)))
      return casesOf(said, without, 'reason-not-said', places, id)
    })
    return standing(this.id, this.kind, cases)
  }
}
