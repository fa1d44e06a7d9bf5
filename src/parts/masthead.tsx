import type { ComponentChildren } from 'preact'
import { type LanguageChoice, LanguageSwitch } from './language-switch.tsx'
import { useSpeech } from './setting.tsx'
import { Text } from './text.tsx'

export interface MastheadProps extends Partial<LanguageChoice> {
  title: string | null
  draft: boolean
  onBack: (() => void) | null
  onStartOver: (() => void) | null
  /** What helps to read the screen. */
  aids?: ComponentChildren
}

/** The top of every screen: whose page it is, and back, start over and the languages in the same place. */
export function Masthead({
  title,
  draft,
  languages = [],
  onLanguage = () => undefined,
  languageLost = false,
  onBack,
  onStartOver,
  aids
}: MastheadProps) {
  const { words, second } = useSpeech()
  return (
    <header class="masthead">
      <p class="masthead-name">
        <strong>Jarside</strong>
        {title !== null && <span class="masthead-title">{title}</span>}
        {draft && <span class="masthead-draft">{words.t('ui:draft-short')}</span>}
      </p>
      <div class="masthead-moves">
        {onBack && (
          <button type="button" class="quiet" data-move="back" onClick={onBack}>
            {words.t('ui:back')}
          </button>
        )}
        {onStartOver && (
          <button type="button" class="quiet" data-move="start-over" onClick={onStartOver}>
            {words.t('ui:start-over')}
          </button>
        )}
        <LanguageSwitch
          languages={languages.filter(({ tag }) => tag !== words.tag)}
          look="quiet"
          onLanguage={onLanguage}
        />
      </div>
      {aids}
      <p class="masthead-trouble" role="status">
        {languageLost && words.t('ui:language-not-loaded')}
      </p>
      {/* A draft translation says that it is one, in both languages. */}
      {second?.shows === 'cautions' && (
        <p class="masthead-translation">
          <Text k="ui:draft-translation" />
        </p>
      )}
    </header>
  )
}
