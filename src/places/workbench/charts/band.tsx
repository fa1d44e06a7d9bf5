import { area, line } from 'd3-shape'
import type { Span } from '../../../science/span.ts'
import type { Axes } from './frame.tsx'

/** One place on the way: where it stands, and the interval there. */
export interface BandPoint {
  readonly at: number
  readonly span: Span
}

/** An interval along the way: the area from low to high, its edges, and a line of what is most likely. */
export function Band({
  axes: { x, y },
  points,
  hasMiddle = true
}: {
  axes: Axes
  points: readonly BandPoint[]
  hasMiddle?: boolean
}) {
  const ofEnd = (end: keyof Span) =>
    line<BandPoint>()
      .x(({ at }) => x(at))
      .y(({ span }) => y(span[end]))(points) ?? ''
  const whole =
    area<BandPoint>()
      .x(({ at }) => x(at))
      .y0(({ span }) => y(span.low))
      .y1(({ span }) => y(span.high))(points) ?? ''
  return (
    <g class="chart-band">
      <path class="chart-area" d={whole} />
      <path class="chart-edge" d={ofEnd('low')} />
      <path class="chart-edge" d={ofEnd('high')} />
      {hasMiddle && <path class="chart-middle" d={ofEnd('mid')} />}
    </g>
  )
}

/** A reading with all that it can truly be as a bar. */
export function ErrorBar({ axes: { x, y }, at, span }: { axes: Axes; at: number; span: Span }) {
  const [middle, low, high] = [x(at), y(span.low), y(span.high)]
  return (
    <g class="chart-reading">
      <line x1={middle} x2={middle} y1={low} y2={high} />
      <line x1={middle - 5} x2={middle + 5} y1={low} y2={low} />
      <line x1={middle - 5} x2={middle + 5} y1={high} y2={high} />
      <circle cx={middle} cy={y(span.mid)} r="5" />
    </g>
  )
}
