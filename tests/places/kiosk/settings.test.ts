import { describe, expect, test } from 'vitest'
import { dayOf } from '../../../src/contacts/kiosk-day.ts'
import { hashPin, isPin } from '../../../src/places/kiosk/pin.ts'
import {
  FIRST_SETTINGS,
  fingerPixels,
  mayBeOutdated,
  offered,
  settingsFrom,
  shownTo
} from '../../../src/places/kiosk/settings.ts'

describe('settings that a device kept', () => {
  test('are read field by field: what makes no sense is as at first', () => {
    expect(settingsFrom(null)).toEqual(FIRST_SETTINGS)
    expect(settingsFrom([1])).toEqual(FIRST_SETTINGS)
    expect(
      settingsFrom({
        pin: 7,
        withoutTrees: ['kombucha-jar', 3],
        idleSeconds: 1,
        text: 'largest',
        contrast: 'none',
        inches: 22,
        reachedOn: 'yesterday'
      })
    ).toEqual({ ...FIRST_SETTINGS, withoutTrees: ['kombucha-jar'], text: 'largest', inches: 22 })
  })

  test('keep no PIN that is no hash: nobody could enter it, and the menu would stay shut', async () => {
    expect(settingsFrom({ pin: 'broken.hash.x' }).pin).toBeNull()
    const pin = await hashPin('2468')
    expect(settingsFrom({ pin }).pin).toBe(pin)
  })

  test('never leave nothing on offer', () => {
    const id = (one: string) => one
    expect(offered(['a', 'b'], id, ['a'])).toEqual(['b'])
    expect(offered(['a', 'b'], id, ['a', 'b', 'c'])).toEqual(['a', 'b'])
  })
})

describe('what a visitor sees', () => {
  const settled = { ...FIRST_SETTINGS, text: 'larger', contrast: 'high' } as const

  test.each([
    [null, null, 'larger', 'high'],
    [true, null, 'largest', 'high'],
    [false, true, 'normal', 'high'],
    [null, false, 'larger', 'ordinary']
  ] as const)('with larger text %s and contrast %s', (large, strong, text, contrast) => {
    expect(shownTo({ large, strong }, settled)).toEqual({ text, contrast })
  })
})

describe('a PIN', () => {
  test('is kept as a hash with a salt of its own, and known again', async () => {
    const [one, other] = await Promise.all([hashPin('2468'), hashPin('2468')])
    expect(one).not.toBe(other)
    expect(one).not.toContain('2468')
    expect(await isPin('2468', one)).toBe(true)
    expect(await isPin('2469', one)).toBe(false)
    expect(await isPin('2468', 'broken')).toBe(false)
  })
})

describe('a kiosk without contact', () => {
  test.each([
    ['2026-11-01', '2026-11-30T12:00:00Z', false],
    ['2026-11-01', '2026-12-02T00:00:00Z', true],
    // A clock that was set back says nothing of the content.
    ['2026-11-01', '2020-01-01T00:00:00Z', false],
    [null, '2036-01-01T00:00:00Z', false]
  ])('since %s may be outdated on %s: %s', (reachedOn, today, outdated) => {
    expect(mayBeOutdated(reachedOn, new Date(today))).toBe(outdated)
  })
})

describe('what is touched', () => {
  test.each([
    [null, 1080, 1920, 65],
    // 2203 pixels on 546 mm.
    [22, 1080, 1920, 79],
    [10, 800, 1280, 119],
    // A wall of pixels as large as plates: the least number counts.
    [55, 1920, 1080, 65]
  ])('on a screen of %s inches is at least so many pixels', (inches, width, height, pixels) => {
    expect(fingerPixels(inches, width, height)).toBe(pixels)
  })
})

describe('a day at the kiosk', () => {
  test('is summed apart from other days, languages over all ends', () => {
    const counts = {
      '2026-11-30 en kombucha-jar 1 0123456789ab likely-mold/': 3,
      '2026-11-30 es kombucha-jar 1 0123456789ab referred': 2,
      '2026-11-30 es abandoned': 4,
      '2026-11-29 en abandoned': 9
    }
    expect(dayOf(counts, '2026-11-30')).toEqual({
      finished: 5,
      referred: 2,
      abandoned: 4,
      languages: { en: 3, es: 6 }
    })
  })
})
