import { describe, expect, test } from 'vitest'
import shipped from '../../public/office.json' with { type: 'json' }
import type { OfficePack } from '../../src/office/office-pack.ts'
import { readOfficePack } from '../../src/office/read-office.ts'
import { referralFor } from '../../src/office/referral.ts'

const today = new Date('2026-11-25T12:00:00Z')
const pack = readOfficePack(shipped)

describe('nothing replaces the emergency and poison numbers', () => {
  const forged = readOfficePack({
    ...shipped,
    referrals: [
      { trigger: 'emergency', name: 'Front desk', number: 'front-desk' },
      { trigger: 'poison-help', name: 'Front desk', number: 'front-desk' }
    ]
  })

  test.each([
    ['emergency', '911'],
    ['poison-help', '1-800-222-1222']
  ])('%s keeps its number under a pack that names another', (trigger, phone) => {
    expect(referralFor(forged, trigger, today)).toMatchObject({ phone, standing: 'fixed' })
  })

  test('both are there without any pack', () => {
    expect(referralFor(null, 'emergency', today).phone).toBe('911')
    expect(referralFor(null, 'poison-help', today).phone).toBe('1-800-222-1222')
  })

  test('both are there for a country that nobody listed', () => {
    const abroad: OfficePack = { ...(pack as OfficePack), country: '__proto__' }
    expect(referralFor(abroad, 'emergency', today).phone).toBe('911')
  })
})

describe('a referral says how far its number can be relied on', () => {
  test('a number verified this year is current', () => {
    expect(referralFor(pack, 'state-specialist', today)).toMatchObject({
      phone: '555-0132',
      standing: 'current'
    })
  })

  test('a number verified more than 365 days ago is stale, and still told', () => {
    const later = new Date('2027-11-04T00:00:00Z')
    const lasting = { ...(pack as OfficePack), validUntil: '2030-01-01' }
    expect(referralFor(lasting, 'state-specialist', later)).toMatchObject({
      phone: '555-0132',
      standing: 'stale'
    })
  })

  test('every number of a pack past its last day is stale', () => {
    const after = new Date('2027-11-01T00:00:00Z')
    expect(referralFor(pack, 'office', after).standing).toBe('stale')
  })

  test('a trigger for which the pack names nobody is missing', () => {
    const silent = { ...(pack as OfficePack), referrals: [] }
    expect(referralFor(silent, 'regulator', today)).toMatchObject({
      phone: null,
      standing: 'missing'
    })
  })

  test('a referral to a number that the pack does not hold is missing', () => {
    const numberless = { ...(pack as OfficePack), numbers: [] }
    expect(referralFor(numberless, 'office', today).standing).toBe('missing')
  })
})

describe('the shipped pack is a made-up county', () => {
  test('every phone number in it is a 555-01xx number', () => {
    expect(shipped.numbers.length).toBeGreaterThan(0)
    for (const { phone } of shipped.numbers) expect(phone).toMatch(/^555-01\d\d$/)
  })

  test('it answers every trigger that an office answers', () => {
    for (const trigger of ['doctor', 'health-department', 'state-specialist', 'other-county']) {
      expect(referralFor(pack, trigger, today).standing).toBe('current')
    }
    for (const trigger of ['regulator', 'office']) {
      expect(referralFor(pack, trigger, today).standing).toBe('current')
    }
  })
})
