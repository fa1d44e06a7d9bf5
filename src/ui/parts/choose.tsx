import { useEffect } from 'preact/hooks'
import { useSpeech } from './setting.tsx'
import { StepHeading } from './step-heading.tsx'
import { Text } from './text.tsx'

/** The first screen: which ferment it is. */
export function Choose({
  trees,
  notice,
  quiet,
  onChoose
}: {
  /** By their ids. */
  trees: readonly string[]
  notice: string | null
  quiet: boolean
  onChoose: (tree: string) => void
}) {
  const { words } = useSpeech()
  const heading = words.t('ui:choose')
  useEffect(() => {
    document.title = `${heading} · Jarside`
  }, [heading])
  return (
    <section class="choose">
      <StepHeading step="choose" quiet={quiet}>
        {heading}
      </StepHeading>
      {notice !== null && <p class="notice">{notice}</p>}
      <p class="question-how">{words.t('ui:choose-how')}</p>
      <div class="choose-list">
        {trees.map(id => (
          <button
            key={id}
            type="button"
            class="choose-tree"
            data-tree={id}
            onClick={() => onChoose(id)}
          >
            <ChooseDrawing />
            <span class="card-label">{words.t(`${id}:title`)}</span>
            <span class="card-hint">{words.t(`${id}:about`)}</span>
          </button>
        ))}
        <div class="choose-other">
          <p class="card-label">{words.t('ui:something-else')}</p>
          <p class="card-hint">
            <Text k="ui:something-else-how" />
          </p>
        </div>
      </div>
    </section>
  )
}

/** A jar from the side, under its cloth: the sign of the whole page. */
function ChooseDrawing() {
  return (
    <svg class="choose-drawing" viewBox="0 0 120 140" aria-hidden="true">
      <path d="M28 34h64v84a12 12 0 0 1-12 12H40a12 12 0 0 1-12-12z" fill="#C98A3C" />
      <path d="M28 34h64v14q-16 5-32 1t-32 2z" fill="#EFE0BF" />
      <path d="M48 51q-3 12 1 22M70 50q4 14-1 30M60 52q-1 6 1 11" class="drawing-strand" />
      <path d="M38 58v44" class="drawing-gleam" />
      <path d="M28 24v94a12 12 0 0 0 12 12h40a12 12 0 0 0 12-12V24" class="drawing-line" />
      <path
        d="M22 24q38-26 76 0l4 10q-5-3-8 2-6-6-12 0-6-6-12 0-6-6-12 0-6-6-12 0-6-6-12 0-3-5-8-2z"
        class="drawing-cloth"
      />
      <path d="M26 26h68" class="drawing-line" />
    </svg>
  )
}
