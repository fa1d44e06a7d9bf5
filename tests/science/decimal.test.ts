import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readDecimal, readSigned } from '../../src/science/decimal.ts'

describe('a typed number', () => {
  test.each([
    ['3.5', 3.5],
    [' 3,5 ', 3.5],
    ['0', 0],
    ['007', 7]
  ])('%j is read as people mean it', (text, number) => {
    expect(readDecimal(text)).toBe(number)
  })

  test.each([
    '',
    ' ',
    'sour',
    '-1',
    '1e3',
    '3.',
    '.5',
    '1,234.5',
    '3 5',
    '0x10',
    'Infinity',
    'NaN'
  ])('%j is none', text => {
    expect(readDecimal(text)).toBeNull()
  })

  test('may be below 0 only where that is allowed', () => {
    expect(readSigned('-1,5')).toBe(-1.5)
    expect(readSigned('--1')).toBeNull()
  })

  test('is never read from garbage as anything but a finite number', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), text => {
        const number = readDecimal(text.slice(0, 300))
        expect(number === null || number >= 0).toBe(true)
      })
    )
  })
})
