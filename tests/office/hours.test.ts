import { describe, expect, test } from 'vitest'
import shipped from '../../public/office.json' with { type: 'json' }
import { isOpen, localTime, noticesAt } from '../../src/office/hours.ts'
import type { OfficeHours, OfficePack } from '../../src/office/office-pack.ts'
import { readOfficePack } from '../../src/office/read-office.ts'

const hours: OfficeHours = {
  zone: 'America/Chicago',
  week: [{ days: ['mon', 'fri'], opens: '08:00', closes: '16:30' }],
  closed: ['2026-11-27']
}

describe('an office is open by its own wall clock', () => {
  test.each([
    ['at its opening minute in winter', '2026-11-23T14:00:00Z', true],
    ['a minute before it opens', '2026-11-23T13:59:00Z', false],
    ['at its opening minute in summer, an hour earlier by UTC', '2026-07-06T13:00:00Z', true],
    ['a minute before it closes', '2026-11-23T22:29:00Z', true],
    ['at its closing minute', '2026-11-23T22:30:00Z', false],
    ['on a day that the week does not name', '2026-11-24T16:00:00Z', false],
    ['on a day on which it is closed', '2026-11-27T16:00:00Z', false]
  ])('%s', (_, moment, open) => {
    expect(isOpen(hours, new Date(moment))).toBe(open)
  })

  test('midnight is 00:00 of the day that begins', () => {
    expect(localTime(new Date('2026-11-23T06:00:00Z'), 'America/Chicago')).toEqual({
      date: '2026-11-23',
      weekday: 'mon',
      clock: '00:00'
    })
  })
})

describe('a notice stands from its first day through its last', () => {
  const pack = readOfficePack(shipped) as OfficePack
  const count = (moment: string) => noticesAt(pack, new Date(moment)).length

  test('it stands on both of them, and on neither neighbor', () => {
    expect(count('2026-11-20T05:59:00Z')).toBe(0)
    expect(count('2026-11-20T06:00:00Z')).toBe(1)
    expect(count('2026-12-26T05:59:00Z')).toBe(1)
    expect(count('2026-12-26T06:00:00Z')).toBe(0)
  })
})
