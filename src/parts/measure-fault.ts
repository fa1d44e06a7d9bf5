import type { MeasureObservation } from '../tree/observation.ts'
import type { Words } from '../words/words.ts'
import type { TypedUnit } from './units.ts'

/** What is wrong with a number that somebody typed for a measure, in one sentence; null when nothing is. */
export function measureFault(
  value: number | null,
  { span, unit }: MeasureObservation,
  typedIn: TypedUnit,
  t: Words['t']
): string | null {
  if (value === null || !Number.isFinite(value)) return t(`ui:errors.not-a-number-${unit}`)
  if (unit === 'day' && !Number.isInteger(value)) return t('ui:errors.not-whole')
  if (value >= span.from && value <= span.to) return null
  return t('ui:errors.out-of-span', {
    from: shown(typedIn.fromMeasure(span.from)),
    to: shown(typedIn.fromMeasure(span.to))
  })
}

const shown = (value: number): number => Number(value.toPrecision(3))
