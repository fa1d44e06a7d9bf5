import { type Sealed, sealedPressure } from '../../science/gas.ts'
import { ALCOHOL_LINE, alcoholCeiling } from '../../science/sugar.ts'
import { digits, type Reckoned, type ResultSentence, SOURCES } from './reckoned.ts'

/** The pressure in a sealed bottle. @throws BadInput for numbers that cannot be. */
export function reckonGas(sealed: Sealed): Reckoned {
  const { now, ceiling, limit, says: verdict } = sealedPressure(sealed)
  const alcohol = alcoholCeiling(sealed.sugar.high)
  const says: ResultSentence[] = [
    { key: `ui:reckon.gas.${verdict}`, values: { limit } },
    {
      key: 'ui:reckon.gas.is',
      values: { low: digits(now.low, 1), mid: digits(now.mid, 1), high: digits(now.high, 1) }
    },
    { key: 'ui:reckon.gas.ceiling', values: { high: digits(ceiling.high, 1) } },
    ...(alcohol >= ALCOHOL_LINE
      ? [{ key: 'ui:reckon.gas.alcohol', values: { percent: digits(alcohol, 1) } } as const]
      : []),
    { key: 'ui:reckon.gas.what-to-do' }
  ]
  return {
    span: now,
    unit: 'bar',
    says,
    sources: [SOURCES.weiss, SOURCES.rates, SOURCES.bottles, SOURCES.ttb],
    more: { verdict, ceiling, limit, alcoholCeiling: alcohol }
  }
}
