import { describe, expect, test } from 'vitest'
import shipped from '../../public/office.json' with { type: 'json' }
import { nameIn, textIn } from '../../src/office/local-text.ts'
import { readOfficePack } from '../../src/office/office-pack.ts'

describe('a kiosk goes on with what is right in a pack', () => {
  test('the shipped pack is read whole', () => {
    const pack = readOfficePack(shipped)

    expect(pack?.numbers).toHaveLength(shipped.numbers.length)
    expect(pack?.referrals).toHaveLength(shipped.referrals.length)
    expect(pack?.notices).toHaveLength(shipped.notices.length)
    expect(pack?.hours.week).toHaveLength(shipped.hours.week.length)
    expect(pack?.validUntil).toBe(shipped['valid-until'])
  })

  test('a malformed entry is left out, its neighbors stay', () => {
    const numbers = [{ id: 'desk' }, 7, null, { id: 'health', phone: '555-0121' }]
    expect(readOfficePack({ ...shipped, numbers })?.numbers.map(({ id }) => id)).toEqual(['health'])
  })

  test('a referral for an emergency is left out', () => {
    const referrals = [{ trigger: 'emergency', name: 'Desk' }, shipped.referrals[0]]
    expect(readOfficePack({ ...shipped, referrals })?.referrals).toHaveLength(1)
  })

  test.each([null, [], 'pack', {}, { ...shipped, 'valid-until': '' }])(
    'there is no pack in %j',
    authored => {
      expect(readOfficePack(authored)).toBeNull()
    }
  )
})

describe('what an office says in its own words', () => {
  const pack = (say: unknown) =>
    readOfficePack({
      ...shipped,
      referrals: [{ trigger: 'office', name: 'The office', say }]
    })?.referrals[0]?.say ?? null

  test('written once is English, and is not read out in another language', () => {
    expect(textIn(pack('Ask for the desk.'), 'en')).toBe('Ask for the desk.')
    expect(textIn(pack('Ask for the desk.'), 'es')).toBeUndefined()
  })

  test('written by language is read in each of them', () => {
    const say = pack({ en: 'Ask for the desk.', es: 'Pida la mesa.', ar: 7 })
    expect(textIn(say, 'es')).toBe('Pida la mesa.')
    expect(textIn(say, 'ar')).toBeUndefined()
  })

  test('of a name is better than none', () => {
    expect(nameIn({ en: 'The office' }, 'es')).toBe('The office')
  })
})
