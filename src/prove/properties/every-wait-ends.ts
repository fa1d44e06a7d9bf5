import type { Property } from '../property.ts'
import { standing } from '../proved.ts'
import { casesOf } from '../said/cases.ts'
import { saidOf } from '../said/said.ts'
import { saidWhere, waitsOf, whenAskedAgain } from '../said/waits.ts'

/**
 * No batch waits for ever: asked again after a wait in which nothing changed, it waits no longer, or it
 * was said by when the wait is over and what then. Counted by what is asked.
 */
export const everyWaitEnds: Property = {
  id: 'every-wait-ends',
  kind: 'law',
  needsWalks: true,
  prove(compiled, places) {
    const said = saidOf(compiled.tree)
    const { facts } = said.occasion
    const waits = waitsOf(said)
    const ends = saidWhere(said, ({ does }) => does.ends === true)
    const endless = facts.without(facts.and(waits, whenAskedAgain(said, waits)), ends)
    return standing(this.id, this.kind, casesOf(said, endless, 'wait-without-end', places))
  }
}
