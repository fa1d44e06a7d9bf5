import { describe, expect, test } from 'vitest'
import { BadInput } from '../../../src/science/bad-input.ts'
import { readPasted } from '../../../src/words/reckoned/pasted-readings.ts'

const shown = (text: string) =>
  readPasted(text, 'meter').readings.map(({ day, ph }) => [day, ph.mid])

describe('readings pasted from a spreadsheet are understood', () => {
  test.each([
    [
      'with tabs and a heading',
      'Day\tpH\n0\t4.5\n3\t3.9',
      [
        [0, 4.5],
        [3, 3.9]
      ]
    ],
    [
      'with decimal commas',
      'Día;pH\n0;4,5\n3;3,9',
      [
        [0, 4.5],
        [3, 3.9]
      ]
    ],
    [
      'with commas between',
      '0,4.5\n3,3.9',
      [
        [0, 4.5],
        [3, 3.9]
      ]
    ],
    [
      'with blanks between',
      '0 4.5\n3   3.9',
      [
        [0, 4.5],
        [3, 3.9]
      ]
    ],
    [
      'with dates, counted from the first',
      '2026-11-25\t4.5\n2026-12-02\t3.6',
      [
        [0, 4.5],
        [7, 3.6]
      ]
    ],
    [
      'with dates as the US writes them',
      '11/25/2026\t4.5\n11/28/26\t3.9',
      [
        [0, 4.5],
        [3, 3.9]
      ]
    ],
    [
      'in words',
      'day 0; pH 4.5\nday 3; pH 3.9',
      [
        [0, 4.5],
        [3, 3.9]
      ]
    ],
    [
      'in no order, with empty lines',
      '7\t3.6\n\n0\t4.5\r\n3\t3.9',
      [
        [0, 4.5],
        [3, 3.9],
        [7, 3.6]
      ]
    ]
  ])('%s', (_, text, expected) => {
    expect(shown(text)).toEqual(expected)
    expect(readPasted(text, 'meter').notUnderstood).toEqual([])
  })

  test('each with what its instrument may be out by', () => {
    const [reading] = readPasted('3\t4.0', 'narrow-strip').readings
    expect(reading?.ph.low).toBeCloseTo(3.7, 9)
    expect(reading?.ph.high).toBeCloseTo(4.3, 9)
    const [unnamed] = readPasted('3\t4.0', undefined).readings
    expect(unnamed?.ph.high).toBeCloseTo(4.5, 9)
  })

  test('and what is not is given back, line by line', () => {
    const { readings, notUnderstood } = readPasted('0\t4.5\nlooked fine\n3\tsour', 'meter')
    expect(readings).toHaveLength(1)
    expect(notUnderstood).toEqual(['looked fine', '3\tsour'])
  })

  test('but no pH that cannot be is taken', () => {
    expect(() => readPasted('3\t15', 'meter')).toThrow(BadInput)
  })
})
