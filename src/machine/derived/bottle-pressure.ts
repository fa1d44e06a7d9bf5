import { BOTTLES, type BottleKind, sealedPressure } from '../../science/gas.ts'
import { amount, inUnit } from '../../science/units.ts'
import { hasKey } from '../../tree/group.ts'
import {
  isUntold,
  nameOf,
  numberOf,
  spanOf,
  UNSURE,
  unlessBad,
  type WorksOut,
  worked
} from './inputs.ts'

/** The pressure in a sealed bottle as % of that at which its kind is a hazard. */
export const bottlePressure: WorksOut = ({ sugar, days, temperature, headspace, bottle }) => {
  if ([sugar, days, temperature, headspace, bottle].some(isUntold)) return null
  const [sweet, since, warm] = [numberOf(sugar), numberOf(days), numberOf(temperature)]
  const room = numberOf(headspace)
  const kind = nameOf(bottle)
  if (sweet === null || since === null || warm === null || room === null || kind === null) {
    return UNSURE
  }
  const bottleKind: BottleKind = hasKey(BOTTLES, kind) ? kind : 'unknown'
  return unlessBad(() => {
    const { now, limit } = sealedPressure({
      sugar: spanOf(sweet),
      days: since.reading,
      celsius: inUnit(amount(warm.reading, 'F'), 'C'),
      headspace: room.reading / 100,
      bottle: bottleKind
    })
    const share = (bar: number) => (100 * bar) / limit
    const span = { low: share(now.low), mid: share(now.mid), high: share(now.high) }
    return worked(span, { low: now.low, high: now.high, limit })
  })
}
