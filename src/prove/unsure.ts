import type { Variable } from '../diagrams/space.ts'
import type { TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import type { FindingCode } from '../findings/catalogue.ts'
import type { Facts, Finding } from '../findings/finding.ts'
import type { Places } from '../findings/place.ts'
import type { Answers } from '../tree/answers.ts'
import { found, shownBy } from './found.ts'
import { everything } from './open.ts'
import { completed, shortestTo } from './witness.ts'

/** The set of fewest unusual answers, one of them fixed, for which a diagram gives a wanted level. */
export function answersTo(
  compiled: TreeDiagrams,
  diagram: number,
  wanted: (level: number) => boolean,
  index: number,
  value: number
): Answers | undefined {
  const open = everything(compiled)
  const choice = shortestTo(compiled, diagram, open, wanted)
  return choice && completed(compiled, new Map([...choice, [index, value]]), open)
}

/** What one answer to one observation brings about, at the first question that asks it. */
export function ofAnswer(
  code: FindingCode,
  compiled: TreeDiagrams,
  { observation, sign }: Variable,
  answer: string,
  places: Places,
  answers: Answers,
  facts: Facts
): Finding {
  const asked = Object.values(compiled.tree.questions).find(({ asks }) => asks === observation)
  const finding = found(code, places[`questions/${asked?.id}`], {
    observation,
    sign: sign ?? '',
    answer,
    ...facts
  })
  return shownBy(compiled.tree, answers, finding)
}
