import type { FindingCode } from '../../findings/catalogue.ts'
import type { Facts, Finding } from '../../findings/finding.ts'
import type { Places } from '../../findings/place.ts'
import type { Answers } from '../../tree/answers.ts'
import { found, shownBy } from '../found.ts'
import { everything } from '../open.ts'
import { completed, shortestTo } from '../witness.ts'
import type { SaidDiagrams, Sentence } from './said.ts'

/** A finding with the set of fewest unusual answers for which a diagram is 1; none where it never is. */
export function refutation(
  { compiled }: SaidDiagrams,
  where: number,
  code: FindingCode,
  place: Places[string] | undefined,
  facts: Facts
): readonly Finding[] {
  const answers = answersIn(compiled, where)
  return answers === undefined ? [] : [shownBy(compiled.tree, answers, found(code, place, facts))]
}

function answersIn(compiled: SaidDiagrams['compiled'], where: number): Answers | undefined {
  const open = everything(compiled)
  const choice = shortestTo(compiled, where, open, level => level === 1)
  return choice && completed(compiled, choice, open)
}

/** Where an author finds what says a sentence: the note, or the line that says what a step does. */
export function placeOf({ kind, id }: Sentence, places: Places): Places[string] | undefined {
  if (kind === 'note') return places[`notes/${id}`]
  return places[`deeds/${kind === 'follow-up' ? 'follow-ups' : 'steps'}/${id}`]
}

/** `the step x`, `the note x`. */
export const sentenceText = ({ kind, id }: Sentence): string =>
  `${kind === 'new-start' ? 'step' : kind} \`${id}\``
