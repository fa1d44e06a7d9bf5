import { useSetting } from '../parts/setting.tsx'
import type { KnowHow } from '../tree/know-how.ts'
import { sayKnowHow } from '../words/know-how-text.ts'
import { sourcesInBrief } from '../words/known.ts'

/** Of all answers those that a class gets about a ferment. */
export const forClass = (answers: readonly KnowHow[], tree: string): readonly KnowHow[] =>
  answers.filter(({ ferment, inClass }) => ferment === tree && inClass)

/** The limits of a ferment's making on one page, for a class. */
export function ClassAnswers({ answers }: { answers: readonly KnowHow[] }) {
  const { words, sources, office, today } = useSetting()
  return (
    <dl class="framed-answers">
      {answers
        .map(answer => sayKnowHow(answer, words, sources, { office, today }))
        .map(({ id, ask, answer, sources: cited }) => (
          <div key={id}>
            <dt>{ask}</dt>
            <dd>
              {answer} <span class="framed-cites">({sourcesInBrief(cited, words)})</span>
            </dd>
          </div>
        ))}
    </dl>
  )
}
