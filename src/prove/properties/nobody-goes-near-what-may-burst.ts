import { goesNear } from '../../tree/does.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'
import { placeOf, refutation, sentenceText } from '../said/refuted.ts'
import { saidOf } from '../said/said.ts'

/**
 * Beside a vessel that may burst, and in an emergency, nothing that is said has anybody touch it, chill
 * it, open it, test it or look closer. Counted by the sentences that do.
 */
export const nobodyGoesNearWhatMayBurst: Property = {
  id: 'nobody-goes-near-what-may-burst',
  kind: 'law',
  needsWalks: true,
  prove(compiled, places) {
    const said = saidOf(compiled.tree)
    const { facts, left, emergency } = said.occasion
    const apart = facts.or(left, emergency)
    const cases = said.sentences
      .filter(({ does }) => goesNear(does))
      .map(sentence => {
        if (!facts.meet(sentence.said, apart)) return []
        const where = facts.and(sentence.said, apart)
        const what = { sentence: sentenceText(sentence) }
        return refutation(said, where, 'sent-to-what-may-burst', placeOf(sentence, places), what)
      })
    return standing(this.id, this.kind, cases)
  }
}
