import { type Bleach, dilute } from '../../science/sanitizer.ts'
import { exactly } from '../../science/span.ts'
import type { Amount } from '../../science/units.ts'
import { digits, type Reckoned, type ResultSentence, SOURCES } from './reckoned.ts'

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
      more: { ...found }
    }
  }
  const { teaspoons, milliliters, ppm, ppmOfMilliliters, plain, rinse } = found
  const spoons: ResultSentence =
    teaspoons > 0
      ? {
          key: 'ui:reckon.bleach.spoons',
          values: { spoons: spoonsText(teaspoons), ppm: Math.round(ppm) }
        }
      : { key: 'ui:reckon.bleach.too-little' }
  const rule: ResultSentence = {
    key: 'ui:reckon.bleach.plain',
    values: { spoons: spoonsText(plain.teaspoons), ppm: Math.round(plain.ppm) }
  }
  return {
    span: exactly(milliliters),
    unit: 'mL',
    says: [
      rule,
      spoons,
      {
        key: 'ui:reckon.bleach.milliliters',
        values: { milliliters, ppm: Math.round(ppmOfMilliliters), each: digits(found.perLiter, 2) }
      },
      ...(rinse ? [{ key: 'ui:reckon.bleach.rinse' } as const] : []),
      never
    ],
    sources,
    more: { ...found }
  }
}

const QUARTERS = ['', '¼', '½', '¾'] as const

/** Quarter teaspoons as a measuring spoon has them: 1¾. */
function spoonsText(teaspoons: number): string {
  const whole = Math.floor(teaspoons)
  const part = QUARTERS[Math.round((teaspoons - whole) * 4)] ?? ''
  return whole === 0 ? part : `${whole}${part}`
}
