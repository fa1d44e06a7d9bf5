import type { ComponentChildren } from 'preact'
import type { SaidVerdict } from '../words/say.ts'
import { Edge } from './edge.tsx'
import { Both } from './text.tsx'

/** A verdict as a card with a broad marked edge: signal word, message, and what belongs under it. */
export function VerdictCard({
  verdict,
  beside,
  heading,
  onPaper = false,
  picture,
  children
}: {
  verdict: SaidVerdict
  /** The same in the language that stands beside. */
  beside?: SaidVerdict | undefined
  /** The heading element, so that the first card can take the focus. */
  heading: (text: ComponentChildren) => ComponentChildren
  /** On the printed sheet, beside the same card on the screen. */
  onPaper?: boolean
  /** What was seen, beside what is said of it. */
  picture?: ComponentChildren
  children?: ComponentChildren
}) {
  const { id, track, signal, signalWord, name, message, why } = verdict
  return (
    <article class={`verdict verdict-${signal}`} data-verdict={id} data-track={track}>
      <Edge verdict={id} track={track} signal={signal} onPaper={onPaper} />
      <div class="verdict-body">
        <p class="verdict-name">
          {signalWord !== null && <span class={`signal signal-${signal}`}>{signalWord}</span>}
          {message !== null && name}
        </p>
        {heading(
          <Both text={message ?? name} second={beside && (beside.message ?? beside.name)} />
        )}
        {why !== null && (
          <p class="verdict-why">
            <Both text={why} second={beside?.why} />
          </p>
        )}
        {children}
      </div>
      {picture}
    </article>
  )
}
