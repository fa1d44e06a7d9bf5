import { useEffect, useMemo, useState } from 'preact/hooks'
import { createStay, type Stay, type StayView } from '../../machine/open-stay.ts'

/** The kiosk's stay, told of every input and of the screen going dark. */
export function useStay(): StayView & Pick<Stay, 'send'> {
  const stay = useMemo(() => createStay(browserClocks), [])
  const [view, setView] = useState(stay.view)
  useEffect(() => {
    const silent = stay.subscribe(() => setView(stay.view()))
    const deaf = hearInputs(() => stay.send({ type: 'touch' }))
    const look = () => stay.send({ type: document.hidden ? 'hide' : 'show' })
    document.addEventListener('visibilitychange', look)
    return () => {
      silent()
      deaf()
      document.removeEventListener('visibilitychange', look)
    }
  }, [stay])
  return { ...view, send: stay.send }
}

const browserClocks = () => ({ steady: performance.now(), wall: Date.now() })

/** Everything that shows that somebody is there; typing on the tablet's own keyboard comes as `input`. */
const INPUTS = [
  'pointerdown',
  'pointermove',
  'pointerup',
  'pointercancel',
  'touchmove',
  'wheel',
  'scroll',
  'keydown',
  'input'
] as const

/** Hears every input anywhere on the page, before whoever it is meant for; gives back how to stop. */
function hearInputs(hear: () => void): () => void {
  const manner = { capture: true, passive: true }
  for (const input of INPUTS) addEventListener(input, hear, manner)
  return () => {
    for (const input of INPUTS) removeEventListener(input, hear, manner)
  }
}
