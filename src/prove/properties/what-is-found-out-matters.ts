import type { Property } from '../property.ts'
import { standing } from '../proved.ts'
import { measuringMatters } from '../said/matters.ts'
import { placeOf, refutation, sentenceText } from '../said/refuted.ts'
import { type Sentence, saidOf } from '../said/said.ts'

/**
 * A test of the acid is said only where some reading could still change a verdict or the use, and nobody
 * is sent to look or to ask about a batch that goes in any case. Counted by the sentences that do so.
 */
export const whatIsFoundOutMatters: Property = {
  id: 'what-is-found-out-matters',
  kind: 'law',
  needsWalks: true,
  prove(compiled, places) {
    const said = saidOf(compiled.tree)
    const { facts, discarded } = said.occasion
    const vain = facts.not(measuringMatters(said, 'ph'))
    const cases = said.sentences.filter(ofThisBatch).map(sentence => {
      const { measure } = sentence.does
      const idle = measure === undefined ? discarded : facts.or(vain, discarded)
      if (!facts.meet(sentence.said, idle)) return []
      const shown = { sentence: sentenceText(sentence), case: sentence.id }
      const where = facts.and(sentence.said, idle)
      return refutation(said, where, 'found-out-for-nothing', placeOf(sentence, places), shown)
    })
    return standing(this.id, this.kind, cases)
  }
}

const ofThisBatch = ({ kind, does }: Sentence): boolean =>
  (kind === 'step' || kind === 'note') &&
  (does.measure !== undefined || does.look === 'near' || does.ask === true)
