import type { Property } from '../property.ts'
import { standing } from '../proved.ts'
import { casesOf } from '../said/cases.ts'
import { saidOf } from '../said/said.ts'
import { saidWhere, waitsOf } from '../said/waits.ts'

/**
 * Wherever a batch waits, it is said when to look again and what to look for, ask or measure. Counted by what is
 * asked, for each of those two.
 */
export const aWaitNamesItsTime: Property = {
  id: 'a-wait-names-its-time',
  kind: 'law',
  needsWalks: true,
  prove(compiled, places) {
    const said = saidOf(compiled.tree)
    const { occasion } = said
    const { facts } = occasion
    const { tree } = compiled
    const waits = waitsOf(said)
    const dated = facts.or(
      saidWhere(
        said,
        ({ kind, id }) => kind === 'note' && tree.advice.notes[id]?.recheck !== undefined
      ),
      saidWhere(said, ({ does }) => does.dated === true),
      ...tree.verdicts.map(({ id }) =>
        tree.advice.verdicts[id]?.recheck === undefined ? 0 : occasion.verdict(id)
      )
    )
    const looks = saidWhere(
      said,
      ({ does }) => does.look === 'near' || does.measure !== undefined || does.ask !== undefined
    )
    return standing(this.id, this.kind, [
      ...casesOf(
        said,
        facts.without(waits, dated),
        'wait-without-time',
        places,
        'when to look again'
      ),
      ...casesOf(said, facts.without(waits, looks), 'wait-without-time', places, 'what to look for')
    ])
  }
}
