import { type Allowed, BadInput, checked } from './bad-input.ts'
import { plusMinus, type Span, type Surely, spanning, surelyAtMost } from './span.ts'
import { acidAt, phWith, type Tea } from './tea.ts'

/** What is known of a starter: its pH as an instrument can truly tell it, or its kind by age. Never its taste. */
export type Starter = { readonly ph: Span } | { readonly kind: StarterKind }
export type StarterKind = keyof typeof STARTER_KINDS

/**
 * The pH that a starter of some age can have. Our judgement, set wider than the published finished range
 * of 2.5 to 4.2 where the liquid may not be finished; no publication ties a starter's pH to its age.
 */
export const STARTER_KINDS = {
  'two-weeks-or-more': { low: 2.4, mid: 2.9, high: 3.5 },
  'one-to-two-weeks': { low: 2.4, mid: 3.2, high: 4.2 },
  'young-or-chilled': { low: 2.4, mid: 3.6, high: 5 },
  unknown: { low: 2.4, mid: 3.2, high: 5 }
} as const satisfies Record<string, Span>

/** What a pH instrument may be out by, either way; with none named the widest counts. Our judgement. */
export const INSTRUMENTS = { meter: 0.05, 'narrow-strip': 0.3, 'wide-strip': 0.5 } as const
export type PhInstrument = keyof typeof INSTRUMENTS

/** The line of acidified food, 21 CFR 114.3. */
export const ACIDIFIED = 4.6
/** The upper limit of finished kombucha: Niagara Region Public Health; Nummer 2013. */
export const FINISHED = 4.2

/**
 * Acetic acid's part: 0.49 to 0.75 in two series read off published plots. Buffer: an assumption, since
 * no titration of sweet tea was found. Neutral: 4.9 black tea (Simpson, Shaw and Smith 2001) to 7.0 (brewed
 * teas in Brazilian water, Lunkes and Hashizume 2014).
 */
const TEAS: readonly Tea[] = [0.75, 0.5, 0.95].flatMap(acetic =>
  [2e-3, 0.8e-3, 4e-3].flatMap(capacity =>
    [5.6, 4.9, 7].map(neutral => ({ acetic, buffer: { capacity, neutral } }))
  )
)
const CENTRAL: Tea = { acetic: 0.75, buffer: { capacity: 2e-3, neutral: 5.6 } }
/** mol/L of acid that a starter can have: published ripe kombucha 0.08 to 0.25, young ones less. */
const STARTER_ACID = { from: 0.008, to: 0.3 } as const
/** Cups and gallons are filled by eye. */
const SHARE_OFF = 0.1
const PH: Allowed = { from: 1.5, to: 7, unit: 'pH' }

export interface Mix {
  /** The pH of the fresh mix. */
  readonly ph: Span
  /** Whether it is surely at most 4.6, and 4.2. */
  readonly atMost46: Surely
  readonly atMost42: Surely
}

/** A reading as what it can truly be. @throws BadInput outside pH 1.5 to 7. */
export function starterReading(ph: number, instrument?: PhInstrument): Span {
  checked('starter-ph', ph, PH)
  return plusMinus(
    ph,
    instrument === undefined ? INSTRUMENTS['wide-strip'] : INSTRUMENTS[instrument]
  )
}

/**
 * Starter as a part of all that is in the jar, 0 to 1; both amounts in one unit.
 * @throws BadInput for an amount that is negative or not finite, and for more starter than batch.
 */
export function shareOf(starter: number, batch: number): number {
  checked('batch', batch, { from: Number.MIN_VALUE, to: 1e6, unit: '' })
  checked('starter', starter, { from: 0, to: batch, unit: '' })
  return starter / batch
}

/** Starter as a part of the whole, where its amount was told against the tea alone. */
export const shareOfWhole = (againstTea: number): number => againstTea / (1 + againstTea)

/**
 * The pH of a fresh mix as an interval, from the starter and its share of the whole (0 to 1): the least
 * and the most over every corner of what nobody measures at home. A reading of the stirred mix beats it.
 *
 * @throws BadInput for a share outside 0 to 1, or a pH outside 1.5 to 7.
 */
export function mix(starter: Starter, share: number): Mix {
  checked('share', share, { from: 0, to: 1, unit: '' })
  const ph = mixPh(spanOf(starter), share)
  return { ph, atMost46: surelyAtMost(ph, ACIDIFIED), atMost42: surelyAtMost(ph, FINISHED) }
}

/** The same for a span of starter pH. */
export function mixPh(starter: Span, share: number): Span {
  const shares =
    share === 1 ? [1] : [share, share * (1 - SHARE_OFF), Math.min(1, share * (1 + SHARE_OFF))]
  const corners = cornersOf(starter).flatMap(({ tea, acid }) =>
    shares.map(one => phWith(tea, acid * one))
  )
  // No such starter is known: nothing can be said but that it lies between starter and tea.
  if (corners.length === 0) return spanning((starter.high + 7) / 2, [starter.low, 7])
  return spanning(phWith(CENTRAL, acidAt(CENTRAL, starter.mid) * share), corners)
}

/**
 * The share of starter (0 to 1) that brings the mix down to a pH. Advise the high end; it is 1 where
 * even starter alone does not surely come down to it.
 *
 * @throws BadInput for a limit outside pH 2.5 to 6.
 */
export function shareNeeded(starter: Starter, limit: number): Span {
  checked('limit', limit, { from: 2.5, to: 6, unit: 'pH' })
  const span = spanOf(starter)
  const corners = cornersOf(span).map(({ tea, acid }) => Math.min(1, acidAt(tea, limit) / acid))
  if (corners.length === 0) return { low: 0, mid: 1, high: 1 }
  const central = Math.min(1, acidAt(CENTRAL, limit) / acidAt(CENTRAL, span.mid))
  return spanning(central, corners)
}

/** Every tea with what a starter of every pH would hold of acid in it, where such starters are known. */
function cornersOf({ low, mid, high }: Span): readonly { tea: Tea; acid: number }[] {
  return TEAS.flatMap(tea =>
    [...new Set([mid, low, high])].map(ph => ({ tea, acid: acidAt(tea, ph) }))
  ).filter(({ acid }) => acid >= STARTER_ACID.from && acid <= STARTER_ACID.to)
}

function spanOf(starter: Starter): Span {
  if ('kind' in starter) return STARTER_KINDS[starter.kind]
  for (const value of [starter.ph.low, starter.ph.mid, starter.ph.high]) {
    if (!(value >= 1 && value <= 7.5)) throw new BadInput('starter-ph', value, PH)
  }
  return starter.ph
}
