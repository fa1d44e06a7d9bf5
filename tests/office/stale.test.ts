import { describe, expect, test } from 'vitest'
import { isPast, isStale } from '../../src/office/stale.ts'

describe('a number goes stale after 365 days', () => {
  test('it is not stale on the 365th day', () => {
    expect(isStale({ verifiedOn: '2026-01-01' }, new Date('2027-01-01T23:59:59Z'))).toBe(false)
  })

  test('it is stale on the 366th day', () => {
    expect(isStale({ verifiedOn: '2026-01-01' }, new Date('2027-01-02T00:00:00Z'))).toBe(true)
  })

  test.each(['', 'last spring'])('it is stale when verified on "%s"', verifiedOn => {
    expect(isStale({ verifiedOn }, new Date('2026-01-01'))).toBe(true)
  })
})

describe('a day is past', () => {
  test('not yet at its end', () => {
    expect(isPast('2027-10-31', new Date('2027-10-31T23:59:59Z'))).toBe(false)
  })

  test('when the next day begins', () => {
    expect(isPast('2027-10-31', new Date('2027-11-01T00:00:00Z'))).toBe(true)
  })

  test('when it cannot be read', () => {
    expect(isPast('soon', new Date('2026-01-01'))).toBe(true)
  })
})
