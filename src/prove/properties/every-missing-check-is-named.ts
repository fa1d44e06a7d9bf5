import type { Property } from '../property.ts'
import { standing } from '../proved.ts'
import { casesOf } from '../said/cases.ts'
import { type SaidDiagrams, saidOf } from '../said/said.ts'
import { forSome, saidWhere, waitsOf } from '../said/waits.ts'

/**
 * Where time and acid together would free a batch that waits, each of the two that is still missing is
 * named. Counted by what is asked, for time and for acid.
 */
export const everyMissingCheckIsNamed: Property = {
  id: 'every-missing-check-is-named',
  kind: 'law',
  needsWalks: true,
  prove(compiled, places) {
    const said = saidOf(compiled.tree)
    const { facts } = said.occasion
    const { tree } = compiled
    const free = said.occasion.use('as-directed')
    const forAnyOf = (where: number, unit: string) =>
      coordinates(said, unit).reduce((so, index) => forSome(said, so, index), where)
    const waits = facts.and(waitsOf(said), forAnyOf(forAnyOf(free, 'ph'), 'day'))
    const acid = facts.without(waits, forAnyOf(free, 'day'))
    const time = facts.without(waits, forAnyOf(free, 'ph'))
    const measured = saidWhere(said, ({ does }) => does.measure !== undefined)
    const dated = saidWhere(said, ({ kind, id, does }) => {
      const recheck = kind === 'note' ? tree.advice.notes[id]?.recheck : undefined
      return does.dated === true || does.ask === true || (recheck !== undefined && 'day' in recheck)
    })
    return standing(this.id, this.kind, [
      ...casesOf(said, facts.without(acid, measured), 'check-not-named', places, 'acid'),
      ...casesOf(said, facts.without(time, dated), 'check-not-named', places, 'time')
    ])
  }
}

/** The coordinates of what is asked about the batch and measured in that unit. */
function coordinates({ compiled }: SaidDiagrams, unit: string): readonly number[] {
  return compiled.variables.flatMap(({ observation }, index) => {
    const about = compiled.tree.observations[observation]
    return about?.kind === 'measure' && about.about === 'batch' && about.unit === unit
      ? [index]
      : []
  })
}
