import type { ComponentChildren } from 'preact'
import { useEffect, useRef } from 'preact/hooks'

/**
 * The heading of a screen. It takes the focus whenever `step` changes: screen readers then read the
 * question before its answers, on the way forward and on the way back.
 */
export function StepHeading({
  step,
  children,
  quiet = false,
  describedBy
}: {
  step: string
  children: ComponentChildren
  /** On the first screen after loading the focus stays where the reader put it. */
  quiet?: boolean
  /** What is read out with the heading, by its id. */
  describedBy?: string
}) {
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => {
    if (!quiet) heading.current?.focus()
  }, [step])
  return (
    <h1 class="step-heading" tabIndex={-1} ref={heading} aria-describedby={describedBy}>
      {children}
    </h1>
  )
}
