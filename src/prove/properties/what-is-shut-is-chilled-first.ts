import type { Does } from '../../tree/does.ts'
import { found } from '../found.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'
import { placeOf, sentenceText } from '../said/refuted.ts'
import { saidOf } from '../said/said.ts'

/** Nothing lets the gas out of a warm vessel: it is chilled before. Counted by the sentences that open one. */
export const whatIsShutIsChilledFirst: Property = {
  id: 'what-is-shut-is-chilled-first',
  kind: 'law',
  needsWalks: true,
  prove(compiled, places) {
    const opening = saidOf(compiled.tree).sentences.filter(({ does }) => opens(does))
    const cases = opening.map(sentence =>
      isChilledBefore(sentence.does)
        ? []
        : [found('opened-warm', placeOf(sentence, places), { sentence: sentenceText(sentence) })]
    )
    return standing(this.id, this.kind, cases)
  }
}

const opens = ({ vessel = [] }: Does): boolean => vessel.includes('open') || vessel.includes('vent')

function isChilledBefore({ vessel = [], after }: Does): boolean {
  const opened = vessel.findIndex(deed => deed === 'open' || deed === 'vent')
  return after === 'chill' || vessel.slice(0, opened).includes('chill')
}
