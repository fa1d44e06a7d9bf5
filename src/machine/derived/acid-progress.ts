import { progress } from '../../science/course.ts'
import { amount, inUnit } from '../../science/units.ts'
import {
  isUntold,
  NO_RANGE,
  numberOf,
  spanOf,
  UNSURE,
  unlessBad,
  type WorksOut,
  worked
} from './inputs.ts'

/** How far the last pH lies above the slow edge of the band that begins at the first reading. */
export const acidProgress: WorksOut = inputs => {
  const { ph, day, temperature, 'first-ph': firstPh, 'first-day': firstDay } = inputs
  if ([ph, day, temperature, firstPh, firstDay].some(isUntold)) return null
  const [last, on, warm] = [numberOf(ph), numberOf(day), numberOf(temperature)]
  const [first, from] = [numberOf(firstPh), numberOf(firstDay)]
  if (last === null || on === null || warm === null || first === null || from === null) {
    return UNSURE
  }
  return unlessBad(() => {
    const readings = [
      { day: from.reading, ph: spanOf(first) },
      { day: on.reading, ph: spanOf(last) }
    ]
    const { aboveSlowEdge } = progress(readings, inUnit(amount(warm.reading, 'F'), 'C'))
    if (aboveSlowEdge === null || on.reading <= from.reading) return NO_RANGE
    const edge = last.reading - aboveSlowEdge.mid
    return worked(aboveSlowEdge, { day: on.reading, from: last.low, to: last.high, edge })
  })
}
