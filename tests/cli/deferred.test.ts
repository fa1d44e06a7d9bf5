import { isDeepStrictEqual } from 'node:util'
import { describe, expect, test } from 'vitest'
import { readDeferred, writeDeferred } from '../../src/cli/deferred.ts'

const long = (of: string) => of.repeat(9000)
const again = (value: unknown) => readDeferred(writeDeferred(value))

describe('what is read part by part is what was written', () => {
  test.each([
    ['small things', { a: 1, b: [null, undefined, -0, 'x'], c: {} }],
    ['large parts, one in the other', { a: { b: { c: { d: long('d') }, e: [long('e')] } } }],
    ['lists of large parts', [[long('a'), { b: long('b') }], long('c'), 1]],
    ['a name that objects have already', JSON.parse(`{"__proto__":{"a":"${long('a')}"}}`)],
    ['no object', 'text']
  ])('%s', (_, value) => {
    expect(isDeepStrictEqual(again(value), value)).toBe(true)
  })

  test('a copy, a list of its keys and JSON hold the large parts too', () => {
    const value = { small: 1, large: { of: long('x') } }
    const copy = { ...(again(value) as typeof value) }
    expect(copy).toEqual(value)
    expect(Object.keys(again(value) as object)).toEqual(['small', 'large'])
    expect(JSON.stringify(again(value))).toBe(JSON.stringify(value))
  })

  test('a part looked at twice is one and the same', () => {
    const read = again({ large: { of: long('x') } }) as { large: object }
    expect(read.large).toBe(read.large)
  })

  test('a function is no data', () => {
    expect(() => writeDeferred({ a: () => 1 })).toThrow()
  })
})
