import type { ComponentChildren } from 'preact'
import { useSpeech } from './setting.tsx'

/** The keys of answers in their order: digits first, then letters that no other key needs. */
const KEYS = [...'123456789abcdefghijklmnop']
export const KEY_FIRST = '1'
export const KEY_NONE = '0'
export const KEY_UNSURE = 'u'

/** The key that gives the answer at a place; none where there are more answers than keys. */
export const keyOf = (index: number): string | undefined => KEYS[index]

/** The key of an answer, shown where answers are given by keys. */
export function Key({ of }: { of: string | undefined }) {
  const { numbered } = useSpeech()
  if (!numbered || of === undefined) return null
  return (
    <span class="key" aria-hidden="true">
      {of.toUpperCase()}
    </span>
  )
}

/** A button that gives an answer, or rules out all that is left, with its key. */
export function KeyedAnswer({
  look,
  answer,
  shortcut,
  describedBy,
  onPress,
  children
}: {
  look: 'primary' | 'secondary'
  answer: string
  shortcut: string
  describedBy?: string | undefined
  onPress: () => void
  children: ComponentChildren
}) {
  return (
    <button
      type="button"
      class={look}
      data-answer={answer}
      data-key={shortcut}
      aria-describedby={describedBy}
      onClick={onPress}
    >
      <Key of={shortcut} />
      {children}
    </button>
  )
}
