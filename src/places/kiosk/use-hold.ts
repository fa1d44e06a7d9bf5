import { useEffect, useRef, useState } from 'preact/hooks'

/** How long a finger has to stay. */
export const HOLD = 3000
/** A finger that moves farther than this, in pixels, wipes and does not press. */
const STAYS = 24

/**
 * A button that a finger has to hold. A keyboard, a switch or a screen reader presses it as any other: a
 * child's hand has none of these.
 */
export function useHold(onHeld: () => void) {
  const [held, setHeld] = useState(false)
  const timer = useRef(0)
  const from = useRef<{ readonly x: number; readonly y: number } | null>(null)
  const release = () => {
    clearTimeout(timer.current)
    from.current = null
    setHeld(false)
  }
  useEffect(() => () => clearTimeout(timer.current), [])
  return {
    held,
    handlers: {
      onPointerDown: (event: PointerEvent) => {
        release()
        // A second finger is a hand on the glass.
        if (!event.isPrimary) return
        from.current = { x: event.clientX, y: event.clientY }
        setHeld(true)
        timer.current = window.setTimeout(() => {
          release()
          onHeld()
        }, HOLD)
      },
      onPointerMove: (event: PointerEvent) => {
        const { current } = from
        if (current === null) return
        if (Math.hypot(event.clientX - current.x, event.clientY - current.y) > STAYS) release()
      },
      onPointerUp: release,
      onPointerCancel: release,
      onPointerLeave: release,
      onClick: (event: MouseEvent) => {
        if (event.detail === 0) onHeld()
      }
    }
  }
}
