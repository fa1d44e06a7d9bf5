import { describe, expect, test } from 'vitest'
import { isExpired, isStale } from '../../src/office/stale.ts'

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

describe('a pack may be trusted through its last day', () => {
  const pack = { validUntil: '2027-10-31' }

  test('it is trusted at the end of that day', () => {
    expect(isExpired(pack, new Date('2027-10-31T23:59:59Z'))).toBe(false)
  })

  test('it has expired when the next day begins', () => {
    expect(isExpired(pack, new Date('2027-11-01T00:00:00Z'))).toBe(true)
  })

  test('it has expired when its last day cannot be read', () => {
    expect(isExpired({ validUntil: 'soon' }, new Date('2026-01-01'))).toBe(true)
  })
})
