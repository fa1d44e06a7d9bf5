import { mix, STARTER_KINDS, type Starter, shareOf } from '../../science/mix.ts'
import { hasKey } from '../../tree/group.ts'
import {
  type Inputs,
  isUntold,
  nameOf,
  numberOf,
  spanOf,
  UNSURE,
  unlessBad,
  type WorksOut,
  worked
} from './inputs.ts'

/** The pH of the fresh mix, from amounts and from the starter's pH or, where nobody measured it, its age. */
export const mixAcidity: WorksOut = inputs => {
  const { starter, batch } = inputs
  if (isUntold(starter) || isUntold(batch)) return null
  const source = starterOf(inputs)
  if (source === null) return null
  const [part, all] = [numberOf(starter), numberOf(batch)]
  if (part === null || all === null || source === 'unsure') return UNSURE
  return unlessBad(() => {
    const share = shareOf(part.reading, all.reading)
    const { ph } = mix(source, share)
    const { low, high } = 'kind' in source ? STARTER_KINDS[source.kind] : source.ph
    const shows = { share: 100 * share, from: low, to: high, ...ph }
    return worked(ph, shows)
  })
}

function starterOf({
  'starter-ph': ph,
  'starter-source': source
}: Inputs): Starter | 'unsure' | null {
  const reading = numberOf(ph)
  if (reading !== null) return { ph: spanOf(reading) }
  const kind = nameOf(source)
  if (kind !== null) {
    return hasKey(STARTER_KINDS, kind) ? { kind } : 'unsure'
  }
  return isUntold(ph) || isUntold(source) ? null : 'unsure'
}
