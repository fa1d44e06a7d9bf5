import { exactly } from '../../science/span.ts'
import { ALCOHOL_LINE, alcoholCeiling, gravityOfBrix, sugarOfBrix } from '../../science/sugar.ts'
import { digits, type Reckoned, SOURCES } from './reckoned.ts'

/**
 * Sugar by °Brix, and with a later reading the most alcohol that the lost sugar can have become.
 * @throws BadInput for numbers that cannot be.
 */
export function reckonBrix(before: number, after?: number): Reckoned {
  const sugar = sugarOfBrix(before)
  const gravity = gravityOfBrix(before)
  const lost = after === undefined ? null : Math.max(0, sugar - sugarOfBrix(after))
  const alcohol = lost === null ? null : alcoholCeiling(lost)
  return {
    span: exactly(sugar),
    unit: 'g/L',
    says: [
      {
        key: 'ui:reckon.brix.is',
        values: { brix: before, gravity: digits(gravity, 4), sugar: digits(sugar, 1) }
      },
      ...(alcohol === null
        ? []
        : [
            { key: 'ui:reckon.brix.alcohol', values: { percent: digits(alcohol, 2) } } as const,
            {
              key: alcohol < ALCOHOL_LINE ? 'ui:reckon.brix.under' : 'ui:reckon.brix.over'
            } as const
          ]),
      { key: 'ui:reckon.brix.no-estimate' }
    ],
    sources: [SOURCES.sugar, SOURCES.ttb],
    more: { gravity, ...(alcohol !== null && { alcoholCeiling: alcohol }) }
  }
}
