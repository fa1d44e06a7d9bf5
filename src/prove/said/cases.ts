import type { FindingCode } from '../../findings/catalogue.ts'
import type { Finding } from '../../findings/finding.ts'
import type { Places } from '../../findings/place.ts'
import { found, shownBy } from '../found.ts'
import { byAnswer } from './by-answer.ts'
import type { SaidDiagrams } from './said.ts'

/**
 * The cases of a law that must hold wherever a diagram is not 1: one for each thing asked, proved where no
 * answer to it breaks the law; else one for each answer that does, at the question that asks it. `missing`
 * says what is not said there.
 */
export function casesOf(
  said: SaidDiagrams,
  where: number,
  code: FindingCode,
  places: Places,
  missing = ''
): readonly (readonly Finding[])[] {
  const { tree } = said.compiled
  const broken = byAnswer(said, where).map(({ answer, answers }) => {
    const [observation = ''] = answer.split(' ')
    const asking = Object.values(tree.questions).find(({ asks }) => asks === observation)
    const facts = { case: missing === '' ? answer : `${missing}: ${answer}`, answer, missing }
    return [shownBy(tree, answers, found(code, places[`questions/${asking?.id}`], facts))]
  })
  const asked = new Set(said.compiled.variables.map(({ observation }) => observation))
  for (const [finding] of broken) asked.delete(String(finding?.facts.answer).split(' ')[0] ?? '')
  return [...[...asked].map(() => []), ...broken]
}
