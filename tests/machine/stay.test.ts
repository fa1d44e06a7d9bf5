import fc from 'fast-check'
import { beforeEach, describe, expect, test } from 'vitest'
import { SimulatedClock } from 'xstate'
import { createStay, type Stay } from '../../src/machine/open-stay.ts'
import { GRACE, QUIET, type StayEvent } from '../../src/machine/stay.ts'
import { spokenSeconds } from '../../src/places/kiosk/countdown.tsx'

const SECOND = 1000

/** A device's clocks: time passes awake or asleep, and the wall clock can be set. */
function device() {
  const timers = new SimulatedClock()
  let steady = 0
  let wall = 1_000_000
  return {
    timers,
    read: () => ({ steady, wall }),
    pass(milliseconds: number) {
      for (let left = milliseconds; left > 0; ) {
        // As a browser goes on: timers are called when their time has come, not all at the end.
        const step = Math.min(left, SECOND)
        steady += step
        wall += step
        timers.increment(step)
        left -= step
      }
    },
    /** No timer runs, and one of the clocks stands still. */
    sleep(milliseconds: number) {
      wall += milliseconds
    },
    set(milliseconds: number) {
      wall += milliseconds
    }
  }
}

let tablet: ReturnType<typeof device>
let stay: Stay
let left: (number | null)[]

beforeEach(() => {
  tablet = device()
  stay = createStay(tablet.read, tablet.timers)
  left = []
  stay.subscribe(() => left.push(stay.view().left))
  stay.send({ type: 'speak', language: 'es' })
  stay.send({ type: 'choose', tree: 'kombucha-jar' })
})

const isWiped = () => stay.view().language === null && stay.view().tree === null
const warnings = () => left.filter(one => one !== null)

describe('a visitor who has gone', () => {
  test('is asked after a minute and wiped after one more', () => {
    tablet.pass(QUIET - 1)
    expect(stay.view().left).toBeNull()
    tablet.pass(1)
    expect(stay.view().left).toBe(60)
    tablet.pass(GRACE - 1)
    expect(stay.view().left).toBe(1)
    expect(isWiped()).toBe(false)
    tablet.pass(1)
    expect(isWiped()).toBe(true)
  })

  test('hears each second of the countdown once', () => {
    tablet.pass(QUIET + GRACE)
    expect(warnings()).toEqual(Array.from({ length: 60 }, (_, at) => 60 - at))
  })

  test('is wiped once, and nothing of it is left', () => {
    stay.send({ type: 'choose-again', told: { day: 'unsure' } })
    stay.send({ type: 'see', looks: { large: true } })
    stay.send({ type: 'see', looks: { strong: true } })
    expect(stay.view().looks).toEqual({ large: true, strong: true })
    expect(stay.view().told).toEqual({ day: 'unsure' })
    tablet.pass(10 * (QUIET + GRACE))
    expect(stay.view()).toEqual({
      language: null,
      untouched: true,
      tree: null,
      chosen: 0,
      told: {},
      looks: { large: null, strong: null },
      left: null,
      visitors: 1,
      staff: null
    })
  })

  test('is wiped though somebody else wakes the sleeping tablet by a touch', () => {
    tablet.pass(10_000)
    stay.send({ type: 'hide' })
    tablet.sleep(QUIET + GRACE)
    stay.send({ type: 'touch' })
    expect(isWiped()).toBe(true)
  })

  test('is wiped as soon as the tablet is looked at again', () => {
    stay.send({ type: 'hide' })
    tablet.sleep(3_600_000)
    stay.send({ type: 'show' })
    expect(isWiped()).toBe(true)
  })

  test('is wiped when the tablet slept behind the warning', () => {
    tablet.pass(QUIET)
    expect(stay.view().left).toBe(60)
    stay.send({ type: 'hide' })
    tablet.sleep(GRACE)
    stay.send({ type: 'keep' })
    expect(isWiped()).toBe(true)
  })
})

describe('a visitor who is still there', () => {
  test('keeps larger text in another language, and leaves it to nobody', () => {
    stay.send({ type: 'see', looks: { large: true, strong: false } })
    stay.send({ type: 'speak', language: 'en' })
    expect(stay.view().looks).toEqual({ large: true, strong: false })
    stay.send({ type: 'leave' })
    expect(stay.view().looks).toEqual({ large: null, strong: null })
    // Nobody is there whose look it could be.
    stay.send({ type: 'see', looks: { large: true } })
    expect(stay.view().looks.large).toBeNull()
  })

  test('is never asked while touching at least once a minute', () => {
    for (let at = 0; at < 30; at++) {
      tablet.pass(QUIET - 1)
      stay.send({ type: 'touch' })
    }
    expect(warnings()).toEqual([])
    expect(isWiped()).toBe(false)
  })

  test('can answer the warning any number of times', () => {
    for (let at = 0; at < 25; at++) {
      tablet.pass(QUIET + GRACE - 1)
      expect(stay.view().left).toBe(1)
      stay.send({ type: 'keep' })
      expect(stay.view().left).toBeNull()
    }
    expect(stay.view().tree).toBe('kombucha-jar')
  })

  test('cannot answer it by a touch beside it: the warning takes its own', () => {
    tablet.pass(QUIET)
    stay.send({ type: 'touch' })
    expect(stay.view().left).toBe(60)
  })

  test('who looked away for a moment goes on', () => {
    tablet.pass(20_000)
    stay.send({ type: 'hide' })
    tablet.sleep(20_000)
    stay.send({ type: 'show' })
    expect(stay.view().left).toBeNull()
    // The moment counts.
    tablet.pass(20_000)
    expect(stay.view().left).toBe(60)
  })

  test('who leaves is not watched any more', () => {
    stay.send({ type: 'leave' })
    tablet.pass(QUIET + GRACE)
    expect(warnings()).toEqual([])
    expect(stay.view().visitors).toBe(1)
  })
})

describe('the wall clock', () => {
  test('set forward in the middle of an answer wipes nobody: whoever is there is asked', () => {
    tablet.pass(5_000)
    tablet.set(24 * 3_600_000)
    tablet.pass(SECOND)
    expect(stay.view().left).toBe(60)
    expect(stay.view().tree).toBe('kombucha-jar')
    stay.send({ type: 'keep' })
    tablet.pass(QUIET - SECOND)
    expect(stay.view().left).toBeNull()
  })

  test('set forward under somebody who goes on touching is no matter', () => {
    tablet.set(3_600_000)
    stay.send({ type: 'touch' })
    tablet.pass(QUIET - SECOND)
    expect(warnings()).toEqual([])
  })

  test('set back keeps nobody', () => {
    tablet.set(-24 * 3_600_000)
    tablet.pass(QUIET + GRACE)
    expect(isWiped()).toBe(true)
  })

  test('set forward while the warning stands takes none of its time', () => {
    tablet.pass(QUIET + 10_000)
    tablet.set(3_600_000)
    tablet.pass(SECOND)
    expect(stay.view().left).toBe(49)
  })
})

describe('the screen that waits', () => {
  test('is untouched after a minute, and not while somebody touches it', () => {
    stay.send({ type: 'leave' })
    tablet.pass(QUIET - 1)
    stay.send({ type: 'touch' })
    tablet.pass(QUIET - 1)
    expect(stay.view().untouched).toBe(false)
    tablet.pass(1)
    expect(stay.view().untouched).toBe(true)
    stay.send({ type: 'touch' })
    expect(stay.view().untouched).toBe(false)
  })
})

describe('whatever happens at a kiosk', () => {
  const event = fc.constantFrom<StayEvent>(
    { type: 'touch' },
    { type: 'keep' },
    { type: 'hide' },
    { type: 'show' },
    { type: 'speak', language: 'en' },
    { type: 'choose', tree: 'kombucha-jar' },
    { type: 'choose-again', told: { day: 'unsure' } },
    { type: 'leave' }
  )
  const happening = fc.oneof(
    { weight: 4, arbitrary: event.map(one => () => stay.send(one)) },
    {
      weight: 1,
      arbitrary: fc
        .integer({ min: 1, max: 150 })
        .map(seconds => () => tablet.pass(seconds * SECOND))
    },
    {
      weight: 1,
      arbitrary: fc
        .integer({ min: 1, max: 9999 })
        .map(seconds => () => tablet.sleep(seconds * SECOND))
    }
  )

  test('a screen that waits holds nothing of anybody, and nobody stays beyond two minutes', () => {
    const seen = { waiting: 0, served: 0 }
    fc.assert(
      fc.property(fc.array(happening, { maxLength: 40 }), all => {
        tablet = device()
        stay = createStay(tablet.read, tablet.timers)
        for (const happens of all) {
          happens()
          const { language, tree, told, left: seconds } = stay.view()
          seen[language === null ? 'waiting' : 'served'] += 1
          if (language === null) expect([tree, told, seconds]).toEqual([null, {}, null])
          if (tree === null && language === null) expect(stay.view().chosen).toBe(0)
        }
        tablet.pass(QUIET + GRACE)
        expect(stay.view().language).toBeNull()
      }),
      { numRuns: 300 }
    )
    expect(Math.min(seen.waiting, seen.served)).toBeGreaterThan(200)
  })
})

describe('the countdown is spoken', () => {
  test('at sixty, thirty and ten seconds, not every second', () => {
    const heard = Array.from({ length: 60 }, (_, at) => spokenSeconds(60 - at))
    expect([...new Set(heard)]).toEqual([60, 30, 10])
    expect([spokenSeconds(31), spokenSeconds(30), spokenSeconds(10)]).toEqual([60, 30, 10])
  })
})

describe('staff', () => {
  beforeEach(() => stay.send({ type: 'leave' }))

  test('open their menu from the waiting screen alone, and nobody can begin meanwhile', () => {
    stay.send({ type: 'staff' })
    expect(stay.view().staff).toBe('menu')
    stay.send({ type: 'speak', language: 'en' })
    expect(stay.view().language).toBeNull()
    stay.send({ type: 'leave' })
    expect(stay.view().staff).toBeNull()
    stay.send({ type: 'speak', language: 'en' })
    stay.send({ type: 'staff' })
    expect(stay.view()).toMatchObject({ language: 'en', staff: null })
  })

  test('who walk away leave no open menu, and none to whoever wakes the tablet', () => {
    stay.send({ type: 'staff' })
    tablet.pass(100_000)
    stay.send({ type: 'touch' })
    tablet.pass(100_000)
    expect(stay.view().staff).toBe('menu')
    tablet.pass(30_000)
    expect(stay.view().staff).toBeNull()
    stay.send({ type: 'staff' })
    stay.send({ type: 'hide' })
    expect(stay.view().staff).toBeNull()
  })

  test('lock the screen until they unlock it', () => {
    stay.send({ type: 'staff' })
    stay.send({ type: 'clean' })
    tablet.pass(3_600_000)
    for (const type of ['touch', 'leave', 'staff'] as const) stay.send({ type })
    expect(stay.view().staff).toBe('cleaning')
    stay.send({ type: 'unlock' })
    expect(stay.view().staff).toBeNull()
  })

  test('set how long a visitor may sit still', () => {
    stay.send({ type: 'settle', quiet: 3 * QUIET })
    stay.send({ type: 'speak', language: 'en' })
    tablet.pass(3 * QUIET - 1)
    expect(stay.view().left).toBeNull()
    tablet.pass(1)
    expect(stay.view().left).toBe(60)
    tablet.pass(GRACE)
    expect(isWiped()).toBe(true)
  })
})
