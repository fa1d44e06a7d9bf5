import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import shipped from '../../public/office.json' with { type: 'json' }
import { officePackSchema } from '../../src/load/schemas/office-pack.ts'
import { isOpen, noticesAt } from '../../src/office/hours.ts'
import { nameIn, textIn } from '../../src/office/local-text.ts'
import { OFFICE_TRIGGERS } from '../../src/office/office-pack.ts'
import { dialed, PHONE } from '../../src/office/plain-text.ts'
import { readOffice, readOfficePack } from '../../src/office/read-office.ts'
import { referralFor } from '../../src/office/referral.ts'

const [front] = shipped.numbers
const [weekdays] = shipped.hours.week
const hoursOf = (change: object) => ({
  hours: { ...shipped.hours, week: [{ ...weekdays, ...change }] }
})

/** One field, wherever it lies in a parsed file. */
interface Place {
  readonly holder: Record<string, unknown>
  readonly key: string
}

const placesIn = (part: unknown): readonly Place[] =>
  typeof part === 'object' && part !== null
    ? Object.entries(part).flatMap(([key, inner]) => [
        { holder: part as Record<string, unknown>, key },
        ...placesIn(inner)
      ])
    : []

describe('a kiosk goes on with what is right in a pack', () => {
  test('the shipped pack is read whole', () => {
    const pack = readOfficePack(shipped)

    expect(pack?.numbers).toHaveLength(shipped.numbers.length)
    expect(pack?.referrals).toHaveLength(shipped.referrals.length)
    expect(pack?.notices).toHaveLength(shipped.notices.length)
    expect(pack?.hours?.week).toHaveLength(shipped.hours.week.length)
    expect(pack?.validUntil).toBe(shipped['valid-until'])
  })

  test('a malformed entry is left out, its neighbors stay', () => {
    const numbers = [{ id: 'desk' }, 7, null, { id: 'health', phone: '555-0121' }]
    expect(readOfficePack({ ...shipped, numbers })?.numbers.map(({ id }) => id)).toEqual(['health'])
  })

  test('a log is kept for longer, not for less, where its months are wrong', () => {
    const { dropped, pack } = readOffice({
      ...shipped,
      log: { 'keep-months': 0, counties: [{ code: '1', name: 'A' }, shipped.log.counties[0]] }
    })
    expect(pack?.log).toEqual({ keepMonths: null, counties: [shipped.log.counties[0]] })
    expect(dropped.map(({ at }) => at)).toEqual([
      'log.keep-months',
      'log.counties[0].code',
      'log.counties[0]'
    ])
    expect(readOffice({ ...shipped, log: undefined }).pack?.log).toBeNull()
  })

  test('whom an office serves is read by language, and an office may say nothing', () => {
    const read = (text: unknown) => readOffice({ ...shipped, 'non-discrimination': text })
    expect(readOfficePack(shipped)?.nonDiscrimination).toEqual(shipped['non-discrimination'])
    expect(read(undefined)).toMatchObject({ pack: { nonDiscrimination: null }, dropped: [] })
    expect(read('We serve all.').pack?.nonDiscrimination).toEqual({ en: 'We serve all.' })
    expect(read({ en: '<b>' }).dropped.map(({ at }) => at)).toContain('non-discrimination.en')
    const silent = { ...shipped, 'non-discrimination': undefined, $schema: undefined }
    expect(officePackSchema.safeParse(JSON.parse(JSON.stringify(silent))).success).toBe(true)
  })

  test('a referral for an emergency is left out', () => {
    const referrals = [{ trigger: 'emergency', name: 'Desk' }, shipped.referrals[0]]
    expect(readOfficePack({ ...shipped, referrals })?.referrals).toHaveLength(1)
  })

  test.each([
    null,
    [],
    'pack',
    '<p>Sign in</p>',
    {},
    { ...shipped, country: 'MX' },
    { ...shipped, country: '__proto__' },
    { ...shipped, country: null }
  ])('there is no pack in %j, and it is said', authored => {
    const { pack, dropped } = readOffice(authored)
    expect(pack).toBeNull()
    expect(dropped.map(({ at }) => at)).toEqual(['country'])
  })

  test.each([
    [
      'an unknown time zone',
      { hours: { ...shipped.hours, zone: 'America/Chicgao' } },
      'hours.zone'
    ],
    ['no hours', { hours: null }, 'hours.zone'],
    ['an hour that no clock has', hoursOf({ opens: '8', closes: '16:30' }), 'hours.week[0]'],
    [
      'hours that end before they begin',
      hoursOf({ opens: '16', closes: '08:00' }),
      'hours.week[0]'
    ],
    ['a day that no week has', hoursOf({ days: ['Mon'] }), 'hours.week[0].days'],
    [
      'a closed day that no calendar has',
      { hours: { ...shipped.hours, closed: ['2026-02-30'] } },
      'hours.closed[0]'
    ]
  ])('with %s nothing is said of who answers now', (_, wrong, at) => {
    const { pack, dropped } = readOffice({ ...shipped, ...wrong })
    expect(pack?.hours).toBeNull()
    expect(pack?.numbers).toHaveLength(shipped.numbers.length)
    expect(dropped.map(one => one.at)).toContain(at)
  })

  test.each([
    [
      'a number that nobody can dial',
      { numbers: [{ ...front, phone: 'ask Pat' }] },
      'numbers[0].phone'
    ],
    [
      'a number with markup',
      { numbers: [{ ...front, phone: '<b>555-0110</b>' }] },
      'numbers[0].phone'
    ],
    ['a name with markup', { office: { name: '<img src=x>', county: 'Larkspur' } }, 'office.name'],
    ['a name that is null', { office: { name: null, county: 'Larkspur' } }, 'office.name'],
    ['an address that is none', { address: 'javascript:alert(1)' }, 'address'],
    [
      'a notice whose last day is none',
      { notices: [{ id: 'a', text: 'Closed', until: 'soon' }] },
      'notices[0].until'
    ],
    ['no last day', { 'valid-until': null }, 'valid-until'],
    ['referrals that are no list', { referrals: {} }, 'referrals']
  ])('%s is left out and said', (_, wrong, at) => {
    const { pack, dropped } = readOffice({ ...shipped, ...wrong })
    expect(pack?.country).toBe('US')
    expect(dropped.map(one => one.at)).toContain(at)
    expect(JSON.stringify(pack)).not.toMatch(/<|ask Pat|javascript|soon/)
  })

  test('a pack without a last day is one whose numbers may be out of date', () => {
    const { pack } = readOffice({ ...shipped, 'valid-until': '2027-02-30' })
    expect(referralFor(pack, 'office', new Date('2026-11-24')).standing).toBe('stale')
  })

  test('in the shipped pack nothing is left out', () => {
    expect(readOffice(shipped).dropped).toEqual([])
  })
})

describe('whatever an office writes', () => {
  /** The shipped pack with any of its parts replaced by anything. */
  const spoiled = fc
    .tuple(
      fc.nat(),
      fc.oneof(fc.jsonValue(), fc.constantFrom(null, '', '<p>', '25:00', 'Central', -1))
    )
    .map(([which, value]) => {
      const copy = structuredClone(shipped) as unknown
      const places = placesIn(copy)
      const { holder, key } = places[which % places.length] as Place
      holder[key] = value
      return copy
    })

  test('nothing throws that every screen calls on', () => {
    fc.assert(
      fc.property(
        fc.oneof(spoiled, fc.jsonValue()),
        fc.date({ noInvalidDate: true }),
        (authored, moment) => {
          const { pack } = readOffice(authored)
          for (const trigger of ['emergency', 'poison-help', ...OFFICE_TRIGGERS]) {
            referralFor(pack, trigger, moment)
          }
          expect(referralFor(pack, 'emergency', moment).phone).toBe('911')
          expect(referralFor(pack, 'poison-help', moment).phone).toBe('1-800-222-1222')
          if (pack === null) return
          noticesAt(pack, moment)
          if (pack.hours) isOpen(pack.hours, moment)
        }
      ),
      { numRuns: 2000 }
    )
  })

  test('what is left out at run time is a finding of `jarside check`', () => {
    let left = 0
    fc.assert(
      fc.property(spoiled, authored => {
        if (readOffice(authored).dropped.length === 0) return
        left += 1
        expect(officePackSchema.safeParse(authored).success).toBe(false)
      }),
      { numRuns: 1000 }
    )
    expect(left).toBeGreaterThan(300)
  })
})

describe('a number', () => {
  test.each([
    ['555-0110', 'tel:5550110'],
    ['(555) 555-0110', 'tel:5555550110'],
    ['+1 555 555 0110', 'tel:+15555550110'],
    ['555-0110 ext. 12', 'tel:5550110;ext=12'],
    ['911', 'tel:911']
  ])('%s is one, and is dialed as %s', (phone, address) => {
    expect(PHONE.test(phone)).toBe(true)
    expect(dialed(phone)).toBe(address)
  })
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
