import type { Finding } from '../../findings/finding.ts'
import type { Places } from '../../findings/place.ts'
import type { Condition } from '../../tree/tree.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'
import { meeting, ruledOut } from '../said/presumed.ts'
import { placeOf, refutation, sentenceText } from '../said/refuted.ts'
import { type SaidDiagrams, type Sentence, saidOf } from '../said/said.ts'

/**
 * No sentence speaks of something that the answers rule out, and none names a day to come that is past.
 * Counted by what the sentences presume, and by the days that they name.
 */
export const nothingRuledOutIsPresumed: Property = {
  id: 'nothing-ruled-out-is-presumed',
  kind: 'law',
  needsWalks: true,
  prove(compiled, places) {
    const said = saidOf(compiled.tree)
    const { countsDays } = compiled.tree
    const cases = said.sentences
      .filter(({ kind }) => kind !== 'new-start')
      .flatMap(sentence => {
        const presumed = (sentence.does.presumes ?? []).map(name =>
          against(said, sentence, ruledOut(said.occasion, name), name, places)
        )
        const dated = daysOf(said, sentence).map(day => {
          const from: Condition = {
            kind: 'measure',
            observation: countsDays ?? '',
            is: { within: { atLeast: day } }
          }
          return against(said, sentence, meeting(said.occasion, [from]), `day ${day}`, places)
        })
        return [...presumed, ...dated]
      })
    return standing(this.id, this.kind, cases)
  }
}

/** The days to come that a sentence names: those of its words, and the one on which it has one look again. */
function daysOf({ compiled }: SaidDiagrams, { kind, id, does }: Sentence): readonly number[] {
  const { countsDays, advice } = compiled.tree
  const recheck = kind === 'note' ? advice.notes[id]?.recheck : undefined
  const days = [does.byDay, recheck !== undefined && 'day' in recheck ? recheck.day : undefined]
  return countsDays === undefined ? [] : [...new Set(days.filter(day => day !== undefined))]
}

function against(
  said: SaidDiagrams,
  sentence: Sentence,
  where: number,
  what: string,
  places: Places
): readonly Finding[] {
  const { facts } = said.occasion
  if (!facts.meet(sentence.said, where)) return []
  const text = sentenceText(sentence)
  const shown = { sentence: text, what, case: `${sentence.id}: ${what}` }
  return refutation(
    said,
    facts.and(sentence.said, where),
    'ruled-out-presumed',
    placeOf(sentence, places),
    shown
  )
}
