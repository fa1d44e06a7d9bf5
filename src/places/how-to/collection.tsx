import type { CatalogueEntry } from '../../parts/catalogue-entry.ts'
import type { AnswerTwice } from '../../parts/know-how-answer.tsx'
import { useSpeech } from '../../parts/setting.tsx'
import { ANY_FERMENT } from '../../tree/know-how.ts'

/** Every question that is answered, by ferment, and the way to print those of one as a class list. */
export function Collection({
  ferments,
  chosen,
  answers,
  shown,
  onChoose,
  onPick
}: {
  ferments: readonly CatalogueEntry[]
  chosen: string
  answers: readonly AnswerTwice[]
  /** The answer that is shown whole. */
  shown: string | null
  onChoose: (ferment: string) => void
  onPick: (id: string) => void
}) {
  const { words } = useSpeech()
  const entries = [{ id: ANY_FERMENT, drawing: '' }, ...ferments]
  const titleOf = (id: string) => words.t(id === ANY_FERMENT ? 'ui:know-how.any' : `${id}:title`)
  return (
    <section class="how-to-all">
      <h2>{words.t('ui:know-how.all')}</h2>
      <nav class="how-to-ferments" aria-label={words.t('ui:know-how.all')}>
        {entries.map(({ id, drawing }) => (
          <button
            key={id}
            type="button"
            data-ferment={id}
            aria-current={id === chosen ? 'true' : undefined}
            onClick={() => onChoose(id)}
          >
            <span
              class="how-to-drawing"
              aria-hidden="true"
              // The project's own file, checked at build.
              dangerouslySetInnerHTML={{ __html: drawing }}
            />
            {titleOf(id)}
          </button>
        ))}
      </nav>
      <div class="how-to-list">
        <h3>{titleOf(chosen)}</h3>
        <ul>
          {answers.map(({ said: { id, ask } }) => (
            <li key={id}>
              <button
                type="button"
                class="know-how-other"
                data-answer={id}
                aria-current={id === shown ? 'true' : undefined}
                onClick={() => onPick(id)}
              >
                {ask}
              </button>
            </li>
          ))}
        </ul>
        <button type="button" class="secondary" data-print onClick={() => window.print()}>
          {words.t('ui:know-how.print')}
        </button>
      </div>
    </section>
  )
}
