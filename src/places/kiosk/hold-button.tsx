import type { ComponentChildren } from 'preact'
import { useHold } from './use-hold.ts'

/** A button that a finger has to hold: its rim runs full meanwhile. */
export function HoldButton({
  look,
  label,
  onHeld,
  children
}: {
  look: string
  label: string
  onHeld: () => void
  children: ComponentChildren
}) {
  const { held, handlers } = useHold(onHeld)
  return (
    <button
      type="button"
      class={`hold ${look}`}
      data-held={held || undefined}
      aria-label={label}
      {...handlers}
    >
      <svg class="hold-rim" viewBox="0 0 100 100" aria-hidden="true">
        <circle cx="50" cy="50" r="44" />
        <circle cx="50" cy="50" r="44" pathLength="100" class="hold-filled" />
      </svg>
      {children}
    </button>
  )
}
