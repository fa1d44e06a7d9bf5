import { useState } from 'preact/hooks'
import { answerHint } from '../words/tree-texts.ts'
import { useSetting, useSpeech } from './setting.tsx'

/** What is said beside a few words: folded away, and read out with them all the same. */
export interface Hint {
  readonly text: string | undefined
  /** The id of its element, for `aria-describedby`; none where there is no hint. */
  readonly id: string | undefined
  readonly isOpen: boolean
  readonly toggle: () => void
}

/** A hint of some text; `of` names its element. */
export function useHint(of: string, text: string | undefined): Hint {
  const [isOpen, setOpen] = useState(false)
  return {
    text,
    id: text === undefined ? undefined : `${of}-hint`,
    isOpen,
    toggle: () => setOpen(!isOpen)
  }
}

/** How to know an answer when one sees it. */
export function useAnswerHint(observation: string, answer: string): Hint {
  const { words } = useSetting()
  return useHint(`${observation}-${answer}`, answerHint(words, observation, answer))
}

/** The button that unfolds a hint, after what it is about. */
export function HintButton({ about, hint }: { about: string; hint: Hint }) {
  const { words } = useSpeech()
  if (hint.id === undefined) return null
  return (
    <button
      type="button"
      class="hint-button"
      aria-expanded={hint.isOpen}
      aria-controls={hint.id}
      aria-label={`${words.t('ui:more-about')}: ${about}`}
      onClick={hint.toggle}
    />
  )
}

/** The hint itself. */
export function HintText({ hint, look }: { hint: Hint; look: string }) {
  if (hint.id === undefined) return null
  return (
    <span class={look} id={hint.id} hidden={!hint.isOpen}>
      {hint.text}
    </span>
  )
}
