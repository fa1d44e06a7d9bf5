import { shareOf } from '../../science/mix.ts'
import { exactly } from '../../science/span.ts'
import { isUntold, numberOf, UNSURE, unlessBad, type WorksOut, worked } from './inputs.ts'

/** Starter as % of all that is in the jar. */
export const starterShare: WorksOut = ({ starter, batch }) => {
  if (isUntold(starter) || isUntold(batch)) return null
  const [part, all] = [numberOf(starter), numberOf(batch)]
  if (part === null || all === null) return UNSURE
  return unlessBad(() => {
    const share = 100 * shareOf(part.reading, all.reading)
    return worked(exactly(share), { starter: part.reading, batch: all.reading, share })
  })
}
