import type { Does } from '../../tree/does.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'
import { placeOf, refutation, sentenceText } from '../said/refuted.ts'
import { saidOf } from '../said/said.ts'

/**
 * While somebody is ill, and in an emergency, nothing that is said throws food out, pours it away, washes
 * what it was in, tests it or has anybody eat it. Counted by the sentences that do.
 */
export const keptFoodStaysAsItIs: Property = {
  id: 'kept-food-stays-as-it-is',
  kind: 'law',
  needsWalks: true,
  prove(compiled, places) {
    const said = saidOf(compiled.tree)
    const { facts, ill, emergency } = said.occasion
    const kept = facts.or(ill, emergency)
    const cases = said.sentences
      .filter(({ does }) => lessens(does))
      .map(sentence => {
        if (!facts.meet(sentence.said, kept)) return []
        const where = facts.and(sentence.said, kept)
        const what = { sentence: sentenceText(sentence) }
        return refutation(said, where, 'kept-food-changed', placeOf(sentence, places), what)
      })
    return standing(this.id, this.kind, cases)
  }
}

const lessens = ({ batch, orElse, use, measure, washes, pours }: Does): boolean =>
  batch === 'discard' ||
  orElse === 'discard' ||
  use === 'some' ||
  measure !== undefined ||
  washes === true ||
  pours === true
