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
export function hearInputs(hear: () => void): () => void {
  const manner = { capture: true, passive: true }
  for (const input of INPUTS) addEventListener(input, hear, manner)
  return () => {
    for (const input of INPUTS) removeEventListener(input, hear, manner)
  }
}
