import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { coverage, isEmpty } from '../../src/tree/coverage.ts'
import type { Range } from '../../src/tree/observation.ts'
import { holds } from '../../src/tree/range.ts'

const gaps = (...ranges: Range[]) => coverage(ranges).gaps.map(({ words }) => words)
const overlaps = (...ranges: Range[]) => coverage(ranges).overlaps.map(({ words }) => words)

describe('the ranges of a measure cover its line once', () => {
  test.each<[string, Range[]]>([
    ['up to a limit, and over it', [{ atMost: 4.2 }, { over: 4.2 }]],
    ['under a limit, and from it on', [{ under: 7 }, { atLeast: 7 }]],
    ['in any order', [{ over: 30 }, { under: 7 }, { atLeast: 7, atMost: 30 }]],
    ['in one piece', [{}]]
  ])('%s', (_, ranges) => {
    expect(coverage(ranges)).toEqual({ gaps: [], overlaps: [] })
  })

  test.each<[string, Range[]]>([
    ['exactly 4.2', [{ under: 4.2 }, { over: 4.2 }]],
    ['what lies over 4.2 and up to 4.6', [{ atMost: 4.2 }, { over: 4.6 }]],
    ['what lies from 7 and under 10', [{ under: 7 }, { atLeast: 10 }]],
    ['everything under 1', [{ atLeast: 1 }]],
    ['everything over 9', [{ atMost: 9 }]]
  ])('a gap is found: %s', (words, ranges) => {
    expect(gaps(...ranges)).toEqual([words])
  })

  test.each<[string, Range[]]>([
    ['exactly 4.2', [{ atMost: 4.2 }, { atLeast: 4.2 }]],
    ['what lies over 4 and up to 4.2', [{ atMost: 4.2 }, { over: 4 }]],
    ['what lies from 2 and up to 3', [{}, { atLeast: 2, atMost: 3 }]]
  ])('an overlap is found: %s', (words, ranges) => {
    expect(overlaps(...ranges)).toEqual([words])
  })

  test('agrees with trying every number near a limit', () => {
    const limit = fc.integer({ min: 0, max: 4 })
    const lower = fc.oneof(
      fc.constant({}),
      limit.map(over => ({ over })),
      limit.map(atLeast => ({ atLeast }))
    )
    const upper = fc.oneof(
      fc.constant({}),
      limit.map(under => ({ under })),
      limit.map(atMost => ({ atMost }))
    )
    const span = { from: -1, to: 5 }
    const range = fc
      .tuple(lower, upper)
      .map(([from, to]): Range => ({ ...from, ...to }))
      .filter(each => !isEmpty(each, span))
    const numbers = Array.from({ length: 25 }, (_, i) => -1 + i / 4)
    fc.assert(
      fc.property(fc.array(range, { minLength: 1, maxLength: 4 }), ranges => {
        const counts = numbers.map(x => ranges.filter(each => holds(each, x)).length)
        const { gaps, overlaps } = coverage(ranges)
        expect(gaps.length > 0).toBe(counts.includes(0))
        expect(overlaps.length > 0).toBe(counts.some(count => count > 1))
      })
    )
  })

  test('a range that no reading can lie in is empty', () => {
    const span = { from: 0, to: 14 }
    expect(isEmpty({ atLeast: 7, under: 7 }, span)).toBe(true)
    expect(isEmpty({ over: 14 }, span)).toBe(true)
    expect(isEmpty({ atLeast: 14 }, span)).toBe(false)
    expect(isEmpty({ atLeast: 7, atMost: 7 }, span)).toBe(false)
  })
})
