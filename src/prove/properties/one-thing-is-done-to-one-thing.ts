import type { Property } from '../property.ts'
import { standing } from '../proved.ts'
import { conflictOf } from '../said/conflict.ts'
import { placeOf, refutation, sentenceText } from '../said/refuted.ts'
import { saidOf } from '../said/said.ts'

/**
 * No two sentences of one outcome do different things to the batch, the vessel, its temperature or what
 * lies in it, or name two times for one call, unless one says that it comes first. Counted by the pairs
 * that would contradict each other.
 */
export const oneThingIsDoneToOneThing: Property = {
  id: 'one-thing-is-done-to-one-thing',
  kind: 'law',
  needsWalks: true,
  prove(compiled, places) {
    const said = saidOf(compiled.tree)
    const { facts } = said.occasion
    // What is done for a new start is done to another batch.
    const sentences = said.sentences.filter(({ kind }) => kind !== 'new-start')
    const pairs = sentences.flatMap((one, index) =>
      sentences.slice(index + 1).flatMap(other => {
        const matter = conflictOf(one.does, other.does)
        // A follow-up on cleaning speaks of each kind of vessel in turn.
        const spared = matter === 'cleaning' && other.kind === 'follow-up'
        return matter === null || spared ? [] : [{ one, other, matter }]
      })
    )
    const cases = pairs.map(({ one, other, matter }) => {
      if (!facts.meet(one.said, other.said)) return []
      const what = { matter, one: sentenceText(one), other: sentenceText(other) }
      const both = facts.and(one.said, other.said)
      return refutation(said, both, 'sentences-contradict', placeOf(one, places), what)
    })
    return standing(this.id, this.kind, cases)
  }
}
