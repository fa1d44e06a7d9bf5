import { checked } from './bad-input.ts'
import { exactly, type Span } from './span.ts'
import { type Amount, inUnit } from './units.ts'

export type SaltKind = keyof typeof TABLESPOON

/**
 * g of salt in a US tablespoon. Canning salt at about 18 g makes USDA's 3 tablespoons to 5 pounds the 2.4 %
 * that it is taken for; all of these are from memory and set wide, above all flakes, which differ by maker.
 */
export const TABLESPOON = {
  canning: { low: 16.5, mid: 18, high: 19.5 },
  table: { low: 17, mid: 18, high: 19.5 },
  'kosher-flake': { low: 8, mid: 11, high: 16 },
  'coarse-sea': { low: 12, mid: 15, high: 18.5 },
  unknown: { low: 8, mid: 16, high: 19.5 }
} as const satisfies Record<string, Span>

/** What a share of salt by weight of cabbage means: all of it in one band, or not known. */
export type KrautBand = 'low' | 'borderline' | 'in-range' | 'high' | 'not-known'

/**
 * % by weight of cabbage. 1.7 and less makes soft kraut (Oregon State SP 50-745); over 3 favors pink yeast
 * (Satora 2020). USDA itself gives 1.9 for large batches: between 1.7 and 2.0 is borderline, not low.
 */
export const KRAUT_LIMITS = { low: 1.7, borderline: 2, high: 3 } as const

/** g of salt from spoons or cups of it. @throws BadInput for an amount below 0 or above 20 L. */
export function saltWeight(volume: Amount<'volume'>, kind: SaltKind): Span {
  const spoons = checked('salt', inUnit(volume, 'tbsp'), { from: 0, to: 1353, unit: 'tbsp' })
  const { low, mid, high } = TABLESPOON[kind]
  return { low: spoons * low, mid: spoons * mid, high: spoons * high }
}

/** g of salt as weighed. @throws BadInput for a weight below 0 or above 100 kg. */
export const weighedSalt = (mass: Amount<'mass'>): Span =>
  exactly(checked('salt', inUnit(mass, 'g'), { from: 0, to: 100_000, unit: 'g' }))

/**
 * Salt as % by weight of what it was put on, not counting the salt.
 * @throws BadInput for nothing to salt, negative salt, more of it than that, or ends the wrong way round.
 */
export function saltShare(salt: Span, vegetables: Amount<'mass'>): Span {
  const grams = checked('vegetables', inUnit(vegetables, 'g'), { from: 1, to: 1e6, unit: 'g' })
  checkedSalt(salt, grams)
  const share = (one: number) => (100 * one) / grams
  return { low: share(salt.low), mid: share(salt.mid), high: share(salt.high) }
}

/** What a share of salt means for sauerkraut. Dills go by their tested brine, kimchi by no scale. */
export function krautBand({ low, high }: Span): KrautBand {
  if (high < KRAUT_LIMITS.low) return 'low'
  if (low > KRAUT_LIMITS.high) return 'high'
  if (low >= KRAUT_LIMITS.low && high <= KRAUT_LIMITS.borderline) return 'borderline'
  return low > KRAUT_LIMITS.borderline && high <= KRAUT_LIMITS.high ? 'in-range' : 'not-known'
}

/** g in a mL, near enough for a kitchen: vinegar is taken as water. */
const WATER = 1

/**
 * Salt as % by weight of a brine, from g of salt and all the liquid in it. The tested dill brine (USDA: ½ cup
 * of salt in 8 cups of water and ¼ cup of vinegar) is about 7 %.
 * @throws BadInput for no liquid, negative salt, more of it than liquid, or ends the wrong way round.
 */
export function brineStrength(salt: Span, liquid: Amount<'volume'>): Span {
  const grams = checked('liquid', inUnit(liquid, 'mL'), { from: 1, to: 1e6, unit: 'mL' }) * WATER
  checkedSalt(salt, grams)
  const strength = (one: number) => (100 * one) / (one + grams)
  return { low: strength(salt.low), mid: strength(salt.mid), high: strength(salt.high) }
}

function checkedSalt({ low, mid, high }: Span, most: number): void {
  for (const value of [low, mid, high]) checked('salt', value, { from: 0, to: most, unit: 'g' })
  checked('salt', mid, { from: low, to: most, unit: 'g' })
  checked('salt', high, { from: mid, to: most, unit: 'g' })
}
