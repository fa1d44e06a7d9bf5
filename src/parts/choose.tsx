import type { ComponentChildren } from 'preact'
import { useEffect } from 'preact/hooks'
import type { CatalogueEntry } from './catalogue-entry.ts'
import { HintButton, HintText, useHint } from './hint.tsx'
import { useSpeech } from './setting.tsx'
import { StepHeading } from './step-heading.tsx'
import { Text } from './text.tsx'

/** A tree to choose: its id, and the drawing by which callers find it. */
export type TreeChoice = Pick<CatalogueEntry, 'id' | 'drawing'>

/** The first screen: which ferment it is. */
export function Choose({
  trees,
  notice,
  quiet,
  above,
  below,
  onChoose
}: {
  trees: readonly TreeChoice[]
  notice: string | null
  quiet: boolean
  /** The ways to other pages, before the list and at its end; left out where none is opened. */
  above?: ComponentChildren
  below?: ComponentChildren
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
      {above}
      <div class="choose-list">
        {trees.map(tree => (
          <TreeCard key={tree.id} {...tree} onChoose={onChoose} />
        ))}
        <div class="choose-other">
          <p class="card-label">{words.t('ui:something-else')}</p>
          <p class="card-hint">
            <Text k="ui:something-else-how" />
          </p>
          {below}
        </div>
      </div>
    </section>
  )
}

function TreeCard({ id, drawing, onChoose }: TreeChoice & { onChoose: (tree: string) => void }) {
  const { words } = useSpeech()
  const title = words.t(`${id}:title`)
  const hint = useHint(`choose-${id}`, words.t(`${id}:about`))
  return (
    <div class="choose-box">
      <button
        type="button"
        class="choose-tree"
        data-tree={id}
        aria-describedby={hint.id}
        onClick={() => onChoose(id)}
      >
        <span
          class="choose-drawing"
          aria-hidden="true"
          // The project's own file, checked at build.
          dangerouslySetInnerHTML={{ __html: drawing }}
        />
        <span class="card-label">{title}</span>
        <HintText hint={hint} look="card-hint" />
      </button>
      <HintButton about={title} hint={hint} />
    </div>
  )
}
