import type { ComponentChildren } from 'preact'
import { directionOf } from '../words/direction.ts'
import type { Language } from '../words/languages.ts'

/** The languages that a screen can be read in. */
export interface LanguageChoice {
  /** Each under its own name. */
  readonly languages: readonly Language[]
  readonly onLanguage: (tag: string) => void
  /** The language asked for could not be loaded; the one before stands. */
  readonly languageLost: boolean
}

/** A button for each language. */
export function LanguageSwitch<L extends Language>({
  languages,
  look,
  pressed,
  onLanguage,
  label = ({ name }) => name
}: {
  languages: readonly L[]
  /** The class of the buttons. */
  look: string
  /** The language spoken, where its button stands among the others. */
  pressed?: string
  onLanguage: (tag: string) => void
  label?: (language: L) => ComponentChildren
}) {
  return (
    <>
      {languages.map(language => (
        <button
          key={language.tag}
          type="button"
          class={look}
          lang={language.tag}
          dir={directionOf(language.tag)}
          data-language={language.tag}
          aria-pressed={pressed === undefined ? undefined : language.tag === pressed}
          onClick={() => onLanguage(language.tag)}
        >
          {label(language)}
        </button>
      ))}
    </>
  )
}
