import { useState } from 'preact/hooks'
import { answerHint, answerLabel } from '../words/tree-texts.ts'
import { useSetting } from './setting.tsx'

/** How to know an answer when one sees it: folded away, and read out with the answer all the same. */
export interface Hint {
  readonly text: string | undefined
  /** The id of its element, for `aria-describedby`; none where there is no hint. */
  readonly id: string | undefined
  readonly isOpen: boolean
  readonly toggle: () => void
}

export function useHint(observation: string, answer: string): Hint {
  const { words } = useSetting()
  const [isOpen, setOpen] = useState(false)
  const text = answerHint(words, observation, answer)
  return {
    text,
    id: text === undefined ? undefined : `${observation}-${answer}-hint`,
    isOpen,
    toggle: () => setOpen(!isOpen)
  }
}

/** The button that unfolds a hint. */
export function HintButton({
  observation,
  answer,
  hint
}: {
  observation: string
  answer: string
  hint: Hint
}) {
  const { words } = useSetting()
  if (hint.id === undefined) return null
  return (
    <button
      type="button"
      class="hint-button"
      aria-expanded={hint.isOpen}
      aria-controls={hint.id}
      aria-label={`${words.t('ui:more-about')}: ${answerLabel(words, observation, answer)}`}
      onClick={hint.toggle}
    />
  )
}

/** The hint itself. */
export function HintText({ hint, class: name }: { hint: Hint; class: string }) {
  if (hint.id === undefined) return null
  return (
    <span class={name} id={hint.id} hidden={!hint.isOpen}>
      {hint.text}
    </span>
  )
}
