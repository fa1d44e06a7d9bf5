import { type Kappa, kappa, type Rate, rates } from '../../science/agreement.ts'
import { digits, type Reckoned, type ResultSentence, SOURCES } from './reckoned.ts'

/**
 * How well two judge alike, of four counts: both yes, first only, second only, both no. Where the second
 * is the truth, what the first misses and raises in vain.
 *
 * @throws BadInput for counts that are no whole numbers from 0, or none at all.
 */
export function reckonAgree(
  both: number,
  first: number,
  second: number,
  neither: number
): Reckoned {
  const found = kappa([
    [both, first],
    [second, neither]
  ])
  const against = rates({
    truePositive: both,
    falsePositive: first,
    falseNegative: second,
    trueNegative: neither
  })
  const { kappa: value, standardError: error } = found
  const span =
    value === null || error === null
      ? null
      : { low: value - 1.96 * error, mid: value, high: value + 1.96 * error }
  return {
    span,
    unit: 'kappa',
    says: [
      ...rateSentence('ui:reckon.agree.sensitivity', against.sensitivity),
      ...rateSentence('ui:reckon.agree.specificity', against.specificity),
      span === null || error === null
        ? { key: 'ui:reckon.agree.no-kappa' }
        : {
            key: 'ui:reckon.agree.kappa',
            values: { kappa: digits(span.mid, 2), error: digits(error, 2), n: found.n }
          },
      {
        key: 'ui:reckon.agree.alike',
        values: { percent: digits(100 * found.observed, 0), n: found.n }
      }
    ],
    sources: [SOURCES.wilson, SOURCES.kappa],
    more: {
      n: found.n,
      kappa: value,
      standardError: error,
      observed: found.observed,
      sensitivity: against.sensitivity,
      specificity: against.specificity
    }
  }
}

function rateSentence(
  key: 'ui:reckon.agree.sensitivity' | 'ui:reckon.agree.specificity',
  rate: Rate | null
): readonly ResultSentence[] {
  if (rate === null) return []
  const percent = (x: number) => digits(100 * x, 0)
  return [
    {
      key,
      values: {
        percent: percent(rate.value),
        low: percent(rate.low),
        high: percent(rate.high),
        n: rate.of
      }
    }
  ]
}

/** Agreement in more than two categories. */
export function reckonTable({ n, observed, kappa: value, standardError: error }: Kappa): Reckoned {
  const isKnown = value !== null && error !== null
  return {
    span: isKnown ? { low: value - 1.96 * error, mid: value, high: value + 1.96 * error } : null,
    unit: 'kappa',
    says: [
      isKnown
        ? {
            key: 'ui:reckon.agree.kappa',
            values: { kappa: digits(value, 2), error: digits(error, 2), n }
          }
        : { key: 'ui:reckon.agree.no-kappa' }
    ],
    sources: [SOURCES.kappa],
    more: { n, kappa: value, standardError: error, observed }
  }
}
