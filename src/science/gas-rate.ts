import { checked } from './bad-input.ts'
import type { Span } from './span.ts'

/**
 * Volumes of gas a day at 21 to 25 °C. Two open vessels made 0.17 to 0.26 (Chen and Liu 2000, Sievers
 * 1995); the high end is a claim without a source. Ten degrees make it 1.5 to 3 times faster: assumed.
 */
const A_DAY = { low: 0.1, mid: 0.4, high: 1.75 } as const satisfies Span
const FASTER = { low: 1.5, mid: 2, high: 3 } as const satisfies Span

/** The end of a span that pulls the other way. */
export const OPPOSITE = { low: 'high', mid: 'mid', high: 'low' } as const

/**
 * Volumes of gas that a day makes in a bottle, at one end of what it can be, while there is sugar. The rates
 * were told of 21 to 25 °C; outside of it how warmth acts is assumed.
 * @throws BadInput outside −1 to 45 °C.
 */
export function volumesADay(end: keyof Span, celsius: number): number {
  checked('temperature', celsius, { from: -1, to: 45, unit: '°C' })
  // Between 21 and 25 °C the rates are those that were told.
  const above = Math.max(0, celsius - 25)
  const below = Math.min(0, celsius - 21)
  const warm = FASTER[end] ** (above / 10)
  const cold = FASTER[OPPOSITE[end]] ** (below / 10)
  return A_DAY[end] * warm * cold
}
