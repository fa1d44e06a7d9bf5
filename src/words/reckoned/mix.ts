import { ACIDIFIED, FINISHED, mix, type Starter, shareNeeded, shareOf } from '../../science/mix.ts'
import { type Amount, inUnit } from '../../science/units.ts'
import { digits, type Reckoned, type ResultSentence, SOURCES } from './reckoned.ts'

/** How acid some starter makes a batch of some size. @throws BadInput for numbers that cannot be. */
export function reckonMix(
  starter: Starter,
  part: Amount<'volume'>,
  batch: Amount<'volume'>
): Reckoned {
  const share = shareOf(inUnit(part, 'mL'), inUnit(batch, 'mL'))
  const { ph, atMost46, atMost42 } = mix(starter, share)
  const needed = shareNeeded(starter, ACIDIFIED)
  const neededFinished = shareNeeded(starter, FINISHED)
  const says: ResultSentence[] = [
    {
      key: 'ui:reckon.mix.is',
      values: {
        share: digits(100 * share, 1),
        low: digits(ph.low, 2),
        mid: digits(ph.mid, 2),
        high: digits(ph.high, 2)
      }
    },
    { key: `ui:reckon.mix.gate-${atMost46}` },
    {
      key: 'ui:reckon.mix.needed',
      // Rounded up: a share that is just enough on paper is not.
      values: { share: Math.ceil(100 * needed.high) }
    },
    { key: 'ui:reckon.mix.reading-beats-it' }
  ]
  return {
    span: ph,
    unit: 'pH',
    says,
    sources: [SOURCES.acidified, SOURCES.finished, SOURCES.queensland, SOURCES.pKa, SOURCES.tea],
    more: { atMost46, atMost42, share, shareNeeded: { '4.6': needed, '4.2': neededFinished } }
  }
}
