import type { ComponentChildren } from 'preact'
import { useEffect, useRef } from 'preact/hooks'
import { useSetting } from './setting.tsx'

/** The string that a walk's mouths hang on, and the one that is still open, by itself on the first screen. */
export function MouthString({
  open,
  at,
  quiet,
  children
}: {
  /** The observation that is asked for the first time. */
  open: string | null
  /** Where the walk stands: when it moves, the current mouth comes into sight. */
  at: string
  quiet: boolean
  /** The mouths that hold an answer. */
  children?: ComponentChildren
}) {
  const { words } = useSetting()
  const list = useRef<HTMLOListElement>(null)
  // On a narrow screen the string is longer than its room: the current mouth must be in sight.
  useEffect(() => {
    if (quiet) return
    const here = list.current?.querySelector('[aria-current]') ?? list.current?.lastElementChild
    here?.scrollIntoView({ block: 'nearest', inline: 'nearest' })
    // Not when drawings or an office arrive meanwhile: nobody moved then.
  }, [at, quiet])
  return (
    <nav class="string" aria-label={words.t('ui:trail')}>
      <ol ref={list}>
        {children}
        {open !== null && (
          <li key={open}>
            <span class="bead bead-open" aria-current="step">
              <span class="visually-hidden">{words.t(`observations:${open}.ask`)}</span>
            </span>
          </li>
        )}
      </ol>
    </nav>
  )
}
