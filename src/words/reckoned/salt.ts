import { krautBand, saltShare } from '../../science/salt.ts'
import type { Span } from '../../science/span.ts'
import type { Amount } from '../../science/units.ts'
import { digits, type Reckoned, type ResultSentence, SOURCES } from './reckoned.ts'

/** What the salt is for: only sauerkraut is judged by its share. */
export type SaltedFor = 'kraut' | 'dill' | 'kimchi' | 'other'

/** Salt as a share of what it was put on. @throws BadInput for numbers that cannot be. */
export function reckonSalt(salt: Span, vegetables: Amount<'mass'>, kind: SaltedFor): Reckoned {
  const share = saltShare(salt, vegetables)
  const band = kind === 'kraut' ? krautBand(share) : null
  const is: ResultSentence =
    share.low === share.high
      ? { key: 'ui:reckon.salt.is', values: { mid: digits(share.mid, 2) } }
      : {
          key: 'ui:reckon.salt.spans',
          values: {
            low: digits(share.low, 1),
            mid: digits(share.mid, 1),
            high: digits(share.high, 1)
          }
        }
  return {
    span: share,
    unit: '%',
    says: [
      is,
      { key: band === null ? `ui:reckon.salt.${kind as 'dill'}` : `ui:reckon.salt.kraut-${band}` }
    ],
    sources: [SOURCES.usda, SOURCES.kraut, SOURCES.spoons],
    more: { band: band ?? 'not-judged' }
  }
}
