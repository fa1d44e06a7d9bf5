import { useMemo, useState } from 'preact/hooks'
import type { FoundAnswers } from '../../know-how/found.ts'
import { KnowHowFound } from '../../parts/know-how-found.tsx'
import { SpeechProvider, useSetting } from '../../parts/setting.tsx'
import { sayKnowHow } from '../../words/know-how-text.ts'
import { useKnowHow } from './use-know-how.ts'

/**
 * What the caller asked of how to, whether one may, and how long, answered beside the facts in both
 * languages. A question about this jar is not: the sheet itself answers that.
 */
export function Asked({ line, onClose }: { line: string | null; onClose: () => void }) {
  const { words, second, office, today, ...setting } = useSetting()
  const atHand = useKnowHow(line !== null)
  const [picked, setPicked] = useState<{ line: string; id: string } | null>(null)
  const found = useMemo(() => (line === null ? null : (atHand?.ask(line) ?? null)), [atHand, line])
  if (atHand === null || found === null || line === null || !isShown(found)) return null
  const { knowHow, withAnswers } = atHand
  const own = withAnswers(words)
  const other = second && { ...second, words: withAnswers(second.words) }
  const where = { office, today }
  const shown = picked?.line === line ? { ...found, answers: [picked.id] } : found
  return (
    <SpeechProvider value={{ ...setting, words: own, second: other }}>
      <section class="desk-asked" aria-label={own.t('ui:know-how.asked', { text: line })}>
        <div class="desk-asked-head">
          <h2>{own.t('ui:know-how.asked', { text: line })}</h2>
          <button type="button" class="quiet" onClick={onClose}>
            {own.t('ui:know-how.close')}
          </button>
        </div>
        <KnowHowFound
          found={shown}
          answers={knowHow.answers
            .filter(({ id }) => shown.answers.includes(id))
            .sort((a, b) => shown.answers.indexOf(a.id) - shown.answers.indexOf(b.id))
            .map(answer => ({
              said: sayKnowHow(answer, own, knowHow.sources, where),
              beside: other && sayKnowHow(answer, other.words, knowHow.sources, where),
              drawings: knowHow.drawings
            }))}
          {...where}
          onPick={id => setPicked({ line, id })}
        />
      </section>
    </SpeechProvider>
  )
}

/** What judges the jar of this call is answered by the sheet, with nothing beside it but a warning. */
const isShown = ({ lead, answers }: FoundAnswers): boolean =>
  lead === 'emergency' || answers.length > 0
