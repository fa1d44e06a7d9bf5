import type { JSX } from 'preact'
import { useId } from 'preact/hooks'
import type { Signal } from '../tree/tree.ts'

/** A pattern tile in a square of 24: told apart by shape alone, in black and white too. */
export const TILES: Readonly<Record<string, JSX.Element>> = {
  'normal-growth': (
    <>
      <circle cx="6" cy="6" r="2.2" />
      <circle cx="18" cy="18" r="2.2" />
    </>
  ),
  'quality-only': (
    <circle cx="12" cy="12" r="5" fill="none" stroke="currentColor" stroke-width="2" />
  ),
  'yeast-strands': (
    <path
      d="M0 8q3-6 6 0t6 0 6 0 6 0M0 20q3-6 6 0t6 0 6 0 6 0"
      fill="none"
      stroke="currentColor"
      stroke-width="2"
    />
  ),
  'wait-and-recheck': (
    <g fill="none" stroke="currentColor" stroke-linecap="round">
      <circle cx="12" cy="12" r="7" stroke-width="2.4" stroke-dasharray="0.1 5.4" />
      <path d="M12 12V8M12 12l2.6 1.6" stroke-width="1.8" />
    </g>
  ),
  'ask-specialist': (
    <path
      d="M8 8a4 4 0 1 1 5.5 3.7q-1.5.6-1.5 2.6M12 18v2.2"
      fill="none"
      stroke="currentColor"
      stroke-width="2.2"
    />
  ),
  'discard-and-sanitize': (
    <path
      d="M-4 16 16-4M-4 28 28-4M8 28 28 8"
      fill="none"
      stroke="currentColor"
      stroke-width="2.4"
    />
  ),
  'likely-mold': (
    <g fill="none" stroke="currentColor" stroke-linecap="round" stroke-width="1.8">
      <circle cx="12" cy="12" r="9.5" stroke-dasharray="0.1 4.15" />
      <circle cx="12" cy="12" r="5.6" stroke-dasharray="0.1 3.5" />
      <circle cx="12" cy="12" r="1" fill="currentColor" stroke="none" />
    </g>
  ),
  'possible-toxin': (
    <path
      d="M-4 16 16-4M-4 28 28-4M8 28 28 8M-4 8 16 28M-4-4 28 28M8-4 28 16"
      fill="none"
      stroke="currentColor"
      stroke-width="2"
    />
  ),
  container: (
    <path
      d="M2 9l10-6 10 6M2 17l10-6 10 6M2 25l10-6 10 6"
      fill="none"
      stroke="currentColor"
      stroke-width="2.2"
    />
  )
}

/** A telephone receiver: people first, and no cross of any color, which are protected signs. */
export const RECEIVER =
  'M6.600 2.500 4.300 3.300C2.900 3.800 2 5.200 2.200 6.700c1 7.700 7.400 14.100 15.100 15.100 1.500.2 2.900-.7 3.400-2.100l.8-2.300c.2-.6-.1-1.200-.6-1.500l-4.100-2.200c-.5-.3-1.100-.2-1.500.2l-1.600 1.700c-2.500-1.200-4.500-3.200-5.700-5.700l1.700-1.600c.4-.4.5-1 .2-1.500L7.700 3.100c-.2-.5-.6-.7-1.100-.6z'

/** The broad marked edge of a verdict card, drawn so that it prints as it stands. */
export function Edge({
  verdict,
  track,
  signal,
  onPaper
}: {
  verdict: string
  track: 'person' | 'container' | 'batch'
  signal: Signal
  onPaper: boolean
}) {
  // Patterns are found by id. The printed sheet is drawn apart from the screen, and counts from one again.
  const id = `${onPaper ? 'paper' : 'screen'}-${useId()}`
  if (track === 'person') {
    return (
      <span class={`edge edge-${signal}`} aria-hidden="true">
        <svg class="edge-receiver" aria-hidden="true" viewBox="0 0 24 24">
          <path d={RECEIVER} fill="currentColor" />
        </svg>
      </span>
    )
  }
  const tile = track === 'container' ? 'container' : verdict
  return (
    <span class={`edge edge-${signal}`} aria-hidden="true">
      <svg class="edge-pattern" aria-hidden="true">
        <pattern id={id} width="24" height="24" patternUnits="userSpaceOnUse">
          <g fill="currentColor">{TILES[tile]}</g>
        </pattern>
        <rect width="100%" height="100%" fill={`url(#${id})`} />
      </svg>
    </span>
  )
}
