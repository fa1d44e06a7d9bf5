import { type ComponentChildren, render } from 'preact'
import { Boundary } from './boundary.tsx'

/**
 * Shows a page over the layer with the numbers, which goes out of sight only when a first screen is
 * there, and comes back when a screen cannot be shown.
 */
export function showPage(children: ComponentChildren): void {
  const page = document.getElementById('page')
  if (page === null) return
  const layer = document.getElementById('last-resort')
  let broken = false
  const fallBack = () => {
    broken = true
    if (layer) layer.hidden = false
    // The watchdog hears it: a script of its own, which this one must not need.
    dispatchEvent(new Event('jarside-trouble'))
  }
  render(
    <Boundary fallback={null} onTrouble={fallBack}>
      {children}
    </Boundary>,
    page
  )
  if (!broken && page.firstElementChild !== null && layer) layer.hidden = true
}
