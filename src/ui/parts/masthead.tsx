import type { Words } from '../../words/words.ts'

/** The top of every screen: whose page it is, and back and start over in the same place. */
export function Masthead({
  words,
  title,
  draft,
  onBack,
  onStartOver
}: {
  words: Words
  title: string | null
  draft: boolean
  onBack: (() => void) | null
  onStartOver: (() => void) | null
}) {
  return (
    <header class="masthead">
      <p class="masthead-name">
        <strong>Jarside</strong>
        {title !== null && <span class="masthead-title">{title}</span>}
        {draft && <span class="masthead-draft">{words.t('ui:draft-short')}</span>}
      </p>
      <div class="masthead-moves">
        {onBack && (
          <button type="button" class="quiet" onClick={onBack}>
            {words.t('ui:back')}
          </button>
        )}
        {onStartOver && (
          <button type="button" class="quiet" onClick={onStartOver}>
            {words.t('ui:start-over')}
          </button>
        )}
      </div>
    </header>
  )
}
