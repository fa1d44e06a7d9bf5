import type { Range } from './observation.ts'

/** A cut in a measure's line: just below the number (0) or just above it (1). */
type Cut = readonly [at: number, side: 0 | 1]

/** Where a range begins and stops, as cuts. */
export function endsOf(range: Range): { readonly from: Cut; readonly to: Cut } {
  const lower: Cut[] = [[Number.NEGATIVE_INFINITY, 0]]
  const upper: Cut[] = [[Number.POSITIVE_INFINITY, 1]]
  if (range.atLeast !== undefined) lower.push([range.atLeast, 0])
  if (range.over !== undefined) lower.push([range.over, 1])
  if (range.under !== undefined) upper.push([range.under, 0])
  if (range.atMost !== undefined) upper.push([range.atMost, 1])
  return {
    from: lower.reduce((a, b) => (compare(a, b) >= 0 ? a : b)),
    to: upper.reduce((a, b) => (compare(a, b) <= 0 ? a : b))
  }
}

/** Whether no reading of the span lies in the range. */
export function isEmpty(
  range: Range,
  span: { readonly from: number; readonly to: number }
): boolean {
  return isVoid(endsOf({ ...range }), endsOf({ atLeast: span.from, atMost: span.to }))
}

function isVoid(...ends: readonly ReturnType<typeof endsOf>[]): boolean {
  const from = ends.map(end => end.from).reduce((a, b) => (compare(a, b) >= 0 ? a : b))
  const to = ends.map(end => end.to).reduce((a, b) => (compare(a, b) <= 0 ? a : b))
  return compare(from, to) >= 0
}

/** What the ranges of a whole line leave out, and what two of them both hold, in words. */
export function coverage(ranges: readonly Range[]): {
  readonly gaps: readonly { readonly index: number; readonly words: string }[]
  readonly overlaps: readonly { readonly index: number; readonly words: string }[]
} {
  const inOrder = ranges
    .map((range, index) => ({ index, ...endsOf(range) }))
    .sort((a, b) => compare(a.from, b.from))
  const gaps: { index: number; words: string }[] = []
  const overlaps: { index: number; words: string }[] = []
  let reached: Cut = [Number.NEGATIVE_INFINITY, 0]
  for (const { index, from, to } of inOrder) {
    if (compare(reached, from) < 0) gaps.push({ index, words: inWords(reached, from) })
    const until = compare(to, reached) < 0 ? to : reached
    if (compare(from, until) < 0) overlaps.push({ index, words: inWords(from, until) })
    if (compare(to, reached) > 0) reached = to
  }
  const last = inOrder.at(-1)
  const end: Cut = [Number.POSITIVE_INFINITY, 1]
  if (last && compare(reached, end) < 0) {
    gaps.push({ index: last.index, words: inWords(reached, end) })
  }
  return { gaps, overlaps }
}

const compare = (a: Cut, b: Cut): number => (a[0] === b[0] ? a[1] - b[1] : a[0] - b[0])

function inWords(from: Cut, to: Cut): string {
  if (from[0] === to[0]) return `exactly ${from[0]}`
  const lower = from[1] === 0 ? `from ${from[0]}` : `over ${from[0]}`
  const upper = to[1] === 0 ? `under ${to[0]}` : `up to ${to[0]}`
  if (!Number.isFinite(from[0]))
    return Number.isFinite(to[0]) ? `everything ${upper}` : 'everything'
  return Number.isFinite(to[0]) ? `what lies ${lower} and ${upper}` : `everything ${lower}`
}
