import {
  type SaltKind,
  saltWeight,
  saltShare as shareOfSalt,
  TABLESPOON,
  weighedSalt
} from '../../science/salt.ts'
import type { Span } from '../../science/span.ts'
import { amount } from '../../science/units.ts'
import { hasKey } from '../../tree/group.ts'
import {
  type Inputs,
  isUntold,
  nameOf,
  numberOf,
  UNSURE,
  unlessBad,
  type WorksOut,
  worked
} from './inputs.ts'

/** Salt as % by weight of what it was put on, from grams or, less surely, from spoons. */
export const saltShare: WorksOut = inputs => {
  const { 'salt-weight': weight, 'salt-volume': volume, vegetables } = inputs
  const grams = numberOf(vegetables)
  if (isUntold(vegetables)) return null
  const isKnown = numberOf(weight) !== null || numberOf(volume) !== null
  if (!isKnown && (isUntold(weight) || isUntold(volume))) return null
  if (!isKnown || grams === null) return UNSURE
  return unlessBad(() => {
    const salt = saltOf(inputs)
    const share = shareOfSalt(salt, amount(grams.reading, 'g'))
    return worked(share, {
      from: salt.low,
      to: salt.high,
      vegetables: grams.reading,
      low: share.low,
      high: share.high
    })
  })
}

function saltOf({ 'salt-weight': weight, 'salt-volume': volume, 'salt-kind': kind }: Inputs): Span {
  const weighed = numberOf(weight)
  if (weighed !== null) return weighedSalt(amount(weighed.reading, 'g'))
  const named = nameOf(kind) ?? 'unknown'
  const saltKind: SaltKind = hasKey(TABLESPOON, named) ? named : 'unknown'
  return saltWeight(amount(numberOf(volume)?.reading ?? 0, 'mL'), saltKind)
}
