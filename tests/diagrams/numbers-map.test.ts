import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { NumbersMap } from '../../src/diagrams/numbers-map.ts'

describe('numbers are found again by a number and a list', () => {
  test('as a Map finds them by text', () => {
    const small = fc.integer({ min: 0, max: 7 })
    const key = fc.tuple(small, fc.array(fc.oneof(small, fc.nat()), { maxLength: 4 }))
    fc.assert(
      fc.property(fc.array(key, { maxLength: 60 }), keys => {
        const numbers = new NumbersMap()
        const texts = new Map<string, number>()
        for (const [first, rest] of keys) {
          const known = texts.get(`${first}:${rest}`)
          expect(numbers.get(first, rest)).toBe(known)
          if (known !== undefined) continue
          texts.set(`${first}:${rest}`, texts.size)
          numbers.add(first, rest, texts.size - 1)
        }
      })
    )
  })

  test('though it has grown many times', () => {
    const numbers = new NumbersMap()
    for (let at = 0; at < 20_000; at++) numbers.add(at % 7, [at, at >> 3], at)
    for (let at = 0; at < 20_000; at++) expect(numbers.get(at % 7, [at, at >> 3])).toBe(at)
    expect(numbers.get(1, [0, 0])).toBeUndefined()
  })
})
