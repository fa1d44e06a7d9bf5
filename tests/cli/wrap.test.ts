import { describe, expect, test } from 'vitest'
import { wrap } from '../../src/cli/wrap.ts'

describe('a long line is broken between words', () => {
  test('its later parts stand under its first word', () => {
    expect(wrap('  12  Dry, like fur or cotton', 18)).toBe(
      '  12  Dry, like\n      fur or\n      cotton'
    )
    expect(wrap('1. Throw it all out', 12)).toBe('1. Throw it\n   all out')
  })

  test('a word longer than the width stays whole', () => {
    expect(wrap('- discard-and-sanitize it', 10)).toBe('- discard-and-sanitize\n  it')
  })

  test('color takes up no width', () => {
    expect(wrap('\u001b[1mDo now\u001b[0m', 6)).toBe('\u001b[1mDo now\u001b[0m')
  })

  test('a line for a file or a program is never broken', () => {
    expect(wrap('a '.repeat(100), null)).toBe('a '.repeat(100))
  })
})
