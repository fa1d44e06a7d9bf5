import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { BadInput } from '../../src/science/bad-input.ts'
import { courseBand, progress, USUAL_START } from '../../src/science/course.ts'
import { exactly, plusMinus } from '../../src/science/span.ts'

const band = (celsius: number, day: number, start = USUAL_START) => {
  const found = courseBand(start, celsius, day)
  if (found.standing !== 'band') throw new Error(`no band at ${celsius} °C on day ${day}`)
  return found.ph
}

// Self-check: the band as it was worked out once by another program with the same equations.
describe('the band comes out as it was worked out before', () => {
  test.each([
    [21, [2.84, 3.68, 4.37], [2.61, 3.35, 4.05], [2.32, 2.95, 3.58]],
    [24, [2.82, 3.6, 4.34], [2.59, 3.27, 3.97], [2.3, 2.87, 3.47]],
    [27, [2.75, 3.52, 4.32], [2.52, 3.19, 3.92], [2.24, 2.8, 3.42]],
    [30, [2.66, 3.44, 4.31], [2.44, 3.12, 3.89], [2.16, 2.73, 3.39]]
  ] as const)('at %d °C on days 3, 7 and 21', (celsius, third, seventh, last) => {
    for (const [at, [low, mid, high]] of [third, seventh, last].entries()) {
      const found = band(celsius, [3, 7, 21][at] as number)
      expect(found.low).toBeCloseTo(low, 2)
      expect(found.mid).toBeCloseTo(mid, 2)
      expect(found.high).toBeCloseTo(high, 2)
    }
  })
})

// Outside the parameters. Inside the band, never equal to it.
describe('a published course lies inside the band', () => {
  test.each([
    ['Hafsari 2021', 6, 3.37, 3.47],
    ['Hafsari 2021', 12, 3.09, 3.47],
    ['Hafsari 2021', 15, 3.08, 3.47],
    ['Jayabalan, abstract', 12, 3.0, 5.0],
    ['UniMAP', 7, 3.0, 4.5],
    ['Brewer 2021, low end on day 5', 5, 3.13, 4.5],
    ['Brewer 2021, high end on day 10', 10, 3.71, 4.5]
  ])('%s, day %d, pH %d', (_, day, ph, start) => {
    const { low, high } = band(25, day, exactly(start))
    expect(ph).toBeGreaterThanOrEqual(low)
    expect(ph).toBeLessThanOrEqual(high)
  })
})

describe('the course', () => {
  test.each([
    ['at 18 °C', 18, 8, 4.5],
    ['at 31 °C', 31, 8, 4.5],
    ['on day 1', 25, 1, 4.5],
    ['on day 22', 25, 22, 4.5],
    ['from a start at pH 5.6', 25, 8, 5.6],
    ['from a start at pH 3', 25, 8, 3]
  ])('is not drawn %s: nothing is published', (_, celsius, day, start) => {
    expect(courseBand(exactly(start), celsius, day).standing).toBe('no-published-range')
  })

  test('turns more acid with the days and with warmth', () => {
    const celsius = fc.double({ min: 20, max: 29, noNaN: true })
    fc.assert(
      fc.property(celsius, fc.integer({ min: 3, max: 20 }), (warm, day) => {
        for (const end of ['low', 'mid', 'high'] as const) {
          expect(band(warm, day + 1)[end]).toBeLessThanOrEqual(band(warm, day)[end] + 1e-9)
          expect(band(warm + 1, day)[end]).toBeLessThanOrEqual(band(warm, day)[end] + 1e-9)
        }
      })
    )
  })

  test('tells a slow batch, a usual one and one that cannot be told', () => {
    const start = { day: 0, ph: plusMinus(4.5, 0.05) }
    const on = (ph: number, off: number) =>
      progress([start, { day: 8, ph: plusMinus(ph, off) }], 24).readings[1]?.lies
    expect(on(4.4, 0.05)).toBe('slower')
    expect(on(3.3, 0.05)).toBe('inside')
    expect(on(4.0, 0.3)).toBe('not-known')
    expect(on(2.2, 0.05)).toBe('faster')
  })

  test('is judged by the last reading, in whatever order they were told', () => {
    const readings = [
      { day: 8, ph: plusMinus(4.4, 0.05) },
      { day: 0, ph: plusMinus(4.5, 0.05) },
      { day: 3, ph: plusMinus(4.45, 0.05) }
    ]
    const above = progress(readings, 24).aboveSlowEdge
    expect(above?.low).toBeGreaterThan(0.3)
    expect(progress([...readings].reverse(), 24).aboveSlowEdge).toEqual(above)
    expect(progress(readings, 18).aboveSlowEdge).toBeNull()
    expect(progress([], 24).aboveSlowEdge).toBeNull()
  })

  test('refuses what cannot be', () => {
    expect(() => courseBand(exactly(15), 25, 8)).toThrow(BadInput)
    expect(() => courseBand(USUAL_START, 149, 8)).toThrow(BadInput)
    expect(() => courseBand(USUAL_START, 25, -1)).toThrow(BadInput)
  })
})
