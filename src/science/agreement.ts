import { BadInput, checked } from './bad-input.ts'

/** A proportion with its 95 % Wilson interval; `of` is how many it was counted among. */
export interface Rate {
  readonly value: number
  readonly low: number
  readonly high: number
  readonly of: number
}

/** How well a yes-or-no judgement meets the truth. Null where nobody could be counted. */
export interface Rates {
  readonly n: number
  readonly sensitivity: Rate | null
  readonly specificity: Rate | null
  readonly positivePredictive: Rate | null
  readonly negativePredictive: Rate | null
}

/** Agreement beyond chance. Null where chance alone would agree always. */
export interface Kappa {
  readonly n: number
  readonly observed: number
  readonly expected: number
  readonly kappa: number | null
  /** Fleiss, Cohen and Everitt 1969, Psychol. Bull. 72:323. */
  readonly standardError: number | null
}

export type Weights = 'none' | 'linear' | 'quadratic'

/** The 97.5 % point of the normal distribution. */
const Z = 1.959963984540054
const COUNT = { from: 0, to: 1e9, unit: '' } as const

/**
 * The Wilson 95 % interval of a proportion (Newcombe 1998, Stat. Med. 17:857).
 * @throws BadInput for counts that are no whole numbers from 0, for nobody, or for more hits than tries.
 */
export function wilson(hits: number, of: number): Rate {
  whole('of', of)
  checked('of', of, { ...COUNT, from: 1 })
  whole('hits', hits)
  checked('hits', hits, { ...COUNT, to: of })
  const value = hits / of
  const square = (Z * Z) / of
  const middle = value + square / 2
  const half = Z * Math.sqrt((value * (1 - value)) / of + square / (4 * of))
  const clipped = (x: number) => Math.min(1, Math.max(0, x / (1 + square)))
  return {
    value,
    low: hits === 0 ? 0 : clipped(middle - half),
    high: hits === of ? 1 : clipped(middle + half),
    of
  }
}

/** Sensitivity first: for a tool of caution what it misses matters most. @throws BadInput as `wilson`. */
export function rates(counts: {
  readonly truePositive: number
  readonly falsePositive: number
  readonly falseNegative: number
  readonly trueNegative: number
}): Rates {
  const { truePositive: tp, falsePositive: fp, falseNegative: fn, trueNegative: tn } = counts
  for (const [name, value] of Object.entries(counts)) whole(name, value)
  const among = (hits: number, of: number) => (of === 0 ? null : wilson(hits, of))
  return {
    n: tp + fp + fn + tn,
    sensitivity: among(tp, tp + fn),
    specificity: among(tn, tn + fp),
    positivePredictive: among(tp, tp + fp),
    negativePredictive: among(tn, tn + fn)
  }
}

/**
 * Cohen's kappa of a square table of counts, rows one judge and columns the other, weighted or not.
 * @throws BadInput for a table that is not square, is empty, or holds what is no whole number from 0.
 */
export function kappa(table: readonly (readonly number[])[], weights: Weights = 'none'): Kappa {
  const size = table.length
  checked('categories', size, { from: 2, to: 100, unit: '' })
  for (const row of table) {
    checked('columns', row.length, { from: size, to: size, unit: '' })
    for (const count of row) whole('count', count)
  }
  const n = table.flat().reduce((sum, one) => sum + one, 0)
  checked('n', n, { ...COUNT, from: 1 })
  const shares = table.map(row => row.map(one => one / n))
  const rows = shares.map(row => row.reduce((sum, one) => sum + one, 0))
  const columns = rows.map((_, j) => shares.reduce((sum, row) => sum + (row[j] ?? 0), 0))
  const weight = (i: number, j: number) => weightOf(weights, i, j, size)
  const over = (f: (i: number, j: number) => number) =>
    rows.reduce((sum, _, i) => columns.reduce((all, __, j) => all + f(i, j), sum), 0)
  const share = (i: number, j: number) => shares[i]?.[j] ?? 0
  const chance = (i: number, j: number) => (rows[i] ?? 0) * (columns[j] ?? 0)
  const observed = over((i, j) => weight(i, j) * share(i, j))
  const expected = over((i, j) => weight(i, j) * chance(i, j))
  if (1 - expected < 1e-12) return { n, observed, expected, kappa: null, standardError: null }
  const value = (observed - expected) / (1 - expected)
  // Mean weight of each row and column, by the other judge's shares.
  const ofRow = rows.map((_, i) => columns.reduce((sum, c, j) => sum + c * weight(i, j), 0))
  const ofColumn = columns.map((_, j) => rows.reduce((sum, r, i) => sum + r * weight(i, j), 0))
  const spread = over(
    (i, j) =>
      share(i, j) * (weight(i, j) - ((ofRow[i] ?? 0) + (ofColumn[j] ?? 0)) * (1 - value)) ** 2
  )
  const variance = (spread - (value - expected * (1 - value)) ** 2) / (n * (1 - expected) ** 2)
  return { n, observed, expected, kappa: value, standardError: Math.sqrt(Math.max(0, variance)) }
}

/**
 * A kappa with its 95 % interval, cut off at -1 and 1; null where there is none. The interval is the normal
 * one: of a handful of pairs it is a rough guide.
 */
export function kappaSpan({
  kappa: value,
  standardError
}: Kappa): { readonly value: number; readonly low: number; readonly high: number } | null {
  if (value === null || standardError === null) return null
  const half = Z * standardError
  return { value, low: Math.max(-1, value - half), high: Math.min(1, value + half) }
}

function weightOf(weights: Weights, i: number, j: number, size: number): number {
  const apart = Math.abs(i - j) / (size - 1)
  if (weights === 'none') return i === j ? 1 : 0
  return weights === 'linear' ? 1 - apart : 1 - apart * apart
}

function whole(name: string, value: number): void {
  if (!Number.isInteger(value) || value < 0) throw new BadInput(name, value, COUNT)
}
