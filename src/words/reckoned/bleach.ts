import { type Bleach, dilute } from '../../science/sanitizer.ts'
import { exactly } from '../../science/span.ts'
import type { Amount } from '../../science/units.ts'
import { digits, type Reckoned, SOURCES } from './reckoned.ts'

/** How much bleach for an amount of water. @throws BadInput for numbers that cannot be. */
export function reckonBleach(bleach: Bleach, target: number, water: Amount<'volume'>): Reckoned {
  const found = dilute(bleach, target, water)
  const never = { key: 'ui:reckon.bleach.never' } as const
  const sources = [SOURCES.rinse]
  if (found.standing === 'refused') {
    return {
      span: null,
      unit: 'mL',
      says: [{ key: `ui:reckon.bleach.${found.because}` }, never],
      sources,
      more: found as unknown as Record<string, unknown>
    }
  }
  const { teaspoons, milliliters, ppm, ppmOfMilliliters, plain, rinse } = found
  return {
    span: exactly(milliliters),
    unit: 'mL',
    says: [
      teaspoons > 0
        ? { key: 'ui:reckon.bleach.spoons', values: { spoons: teaspoons, ppm: Math.round(ppm) } }
        : { key: 'ui:reckon.bleach.too-little' },
      {
        key: 'ui:reckon.bleach.milliliters',
        values: { milliliters, ppm: Math.round(ppmOfMilliliters), each: digits(found.perLiter, 2) }
      },
      {
        key: 'ui:reckon.bleach.plain',
        values: { spoons: plain.teaspoons, ppm: Math.round(plain.ppm) }
      },
      ...(rinse ? [{ key: 'ui:reckon.bleach.rinse' } as const] : []),
      never
    ],
    sources,
    more: found as unknown as Record<string, unknown>
  }
}
