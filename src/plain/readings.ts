import type { Interval } from '../tree/answers.ts'
import { isExact } from '../tree/bands.ts'
import type { MeasureObservation, Unit } from '../tree/observation.ts'
import { measured, rounded } from '../tree/reading.ts'
import type { ReadingRun } from './stop.ts'

/** How finely a reading is read off, in the measure's unit; what is not listed is read in whole numbers. */
const FINENESS: Readonly<Partial<Record<Unit, number>>> = {
  ph: 0.01,
  'ph-difference': 0.01,
  percent: 0.1
}

export const finenessOf = ({ unit }: MeasureObservation): number => FINENESS[unit] ?? 1

/** Whether a measure can be read off by somebody who has no page that works it out. */
const instrumentsOf = (measure: MeasureObservation): readonly (string | null)[] =>
  measure.instruments.length > 0 ? measure.instruments.map(({ id }) => id) : [null]

/** All readings of a measure in runs, by what they lead to; `keyOf` names that. */
export function runsOf(
  measure: MeasureObservation,
  keyOf: (interval: Interval) => string
): ReadonlyMap<string, readonly ReadingRun[]> {
  const runs = new Map<string, ReadingRun[]>()
  const step = finenessOf(measure)
  const { from, to } = measure.span
  const count = Math.round((to - from) / step)
  for (const instrument of instrumentsOf(measure)) {
    let open = { key: '', from, to: from }
    for (let place = 0; place <= count; place++) {
      const reading = rounded(from + place * step)
      const interval = measured(measure, reading, instrument ?? undefined)
      const key = keyOf(interval)
      if (place > 0 && open.key === key) open.to = reading
      else {
        if (place > 0) add(runs, open.key, { instrument, from: open.from, to: open.to })
        open = { key, from: reading, to: reading }
      }
    }
    add(runs, open.key, { instrument, from: open.from, to: open.to })
  }
  return runs
}

function add(runs: Map<string, ReadingRun[]>, key: string, run: ReadingRun): void {
  runs.set(key, [...(runs.get(key) ?? []), run])
}

/** The reading nearest to a given one that can be read off at all. */
export function readOff(measure: MeasureObservation, { reading, instrument }: Interval): Interval {
  const step = finenessOf(measure)
  const { from, to } = measure.span
  const place = Math.round((Math.min(to, Math.max(from, reading)) - from) / step)
  const value = rounded(from + place * step)
  const [first] = instrumentsOf(measure)
  return isExact(measure)
    ? measured(measure, value)
    : measured(measure, value, instrument ?? first ?? undefined)
}
