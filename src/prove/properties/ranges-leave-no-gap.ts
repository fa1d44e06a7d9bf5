import type { Finding } from '../../findings/finding.ts'
import type { Places } from '../../findings/place.ts'
import { coverage } from '../../tree/coverage.ts'
import type { MeasureQuestion, Question } from '../../tree/tree.ts'
import { found } from '../found.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'

/** The ranges of every question about a measure hold each reading once. Counted by such questions. */
export const rangesLeaveNoGap: Property = {
  id: 'ranges-leave-no-gap',
  kind: 'shape',
  needsWalks: false,
  prove({ tree }, places) {
    const isMeasure = (question: Question) => question.kind === 'measure'
    return standing(this.id, this.kind, [
      ...Object.values(tree.questions)
        .filter(isMeasure)
        .map(question => against(question, `questions/${question.id}`, places)),
      ...tree.after
        .filter(isMeasure)
        .map(question => against(question, `after/${question.id}`, places))
    ])
  }
}

function against(question: MeasureQuestion, path: string, places: Places): readonly Finding[] {
  const { gaps, overlaps } = coverage(question.ranges.map(({ range }) => range))
  const place = (index: number) => places[`${path}/${index}`] ?? places[path]
  const facts = { question: question.id, asks: question.asks }
  return [
    ...gaps.map(({ index, words }) => found('range-gap', place(index), { ...facts, gap: words })),
    ...overlaps.map(({ index, words }) =>
      found('range-overlap', place(index), { ...facts, both: words })
    )
  ]
}
