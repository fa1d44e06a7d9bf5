import { useSetting } from '../parts/setting.tsx'
import type { KnowHow } from '../tree/know-how.ts'
import { sayKnowHow } from '../words/know-how-text.ts'
import { sourcesInBrief } from '../words/known.ts'
import { framedSheetHtml } from './sheet-frame.tsx'
import type { SheetOf } from './verdict-sheet.tsx'

/** The limits of a ferment's making on one page, for a class; null where none are chosen for it. */
export function classSheetHtml(sheet: SheetOf): string | null {
  const answers = sheet.knowHow.answers.filter(
    ({ ferment, inClass }) => ferment === sheet.tree.id && inClass
  )
  if (answers.length === 0) return null
  return framedSheetHtml(sheet, 'class', () => <Answers answers={answers} />)
}

function Answers({ answers }: { answers: readonly KnowHow[] }) {
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
