import { beforeEach, describe, expect, test } from 'vitest'
import {
  type Clock,
  GRACE,
  QUIET,
  type Sitting,
  spokenSeconds,
  watchSitting
} from '../../../src/ui/kiosk/idle.ts'

/** A clock that goes only when told to; `sleep` lets time pass without a tick. */
function handClock() {
  let now = 0
  let ticks: { at: number; every: number; tick: () => void }[] = []
  const clock: Clock = {
    start() {
      const from = now
      return () => now - from
    },
    every(every, tick) {
      const one = { at: now + every, every, tick }
      ticks.push(one)
      return () => {
        ticks = ticks.filter(other => other !== one)
      }
    }
  }
  return {
    clock,
    running: () => ticks.length,
    sleep(ms: number) {
      now += ms
    },
    pass(ms: number) {
      const until = now + ms
      for (;;) {
        const next = ticks.filter(({ at }) => at <= until).sort((a, b) => a.at - b.at)[0]
        if (next === undefined) break
        now = Math.max(now, next.at)
        next.at += next.every
        next.tick()
      }
      now = until
    }
  }
}

let hand: ReturnType<typeof handClock>
let sitting: Sitting
let told: (number | null)[]
let gone: number

beforeEach(() => {
  hand = handClock()
  told = []
  gone = 0
  sitting = watchSitting(
    hand.clock,
    seconds => told.push(seconds),
    () => {
      gone += 1
    }
  )
})

describe('a visitor who has gone', () => {
  test('is asked after a minute and wiped after one more', () => {
    hand.pass(QUIET - 1)
    expect(told).toEqual([])
    hand.pass(1)
    expect(told).toEqual([60])
    hand.pass(GRACE - 1)
    expect(gone).toBe(0)
    expect(told.at(-1)).toBe(1)
    hand.pass(1)
    expect(gone).toBe(1)
  })

  test('hears each second of the countdown once', () => {
    hand.pass(QUIET + GRACE)
    expect(told).toEqual(Array.from({ length: 60 }, (_, at) => 60 - at))
  })

  test('is wiped once, and then no clock runs', () => {
    hand.pass(10 * (QUIET + GRACE))
    expect(gone).toBe(1)
    expect(hand.running()).toBe(0)
  })

  test('is wiped though somebody else wakes the sleeping tablet by a touch', () => {
    hand.pass(10_000)
    hand.sleep(QUIET + GRACE)
    sitting.touch()
    expect(gone).toBe(1)
  })

  test('is wiped as soon as the tablet is looked at again', () => {
    hand.sleep(3_600_000)
    sitting.look()
    expect(gone).toBe(1)
  })
})

describe('a visitor who is still there', () => {
  test('is never asked while touching at least once a minute', () => {
    for (let at = 0; at < 30; at++) {
      hand.pass(QUIET - 1)
      sitting.touch()
    }
    expect(told).toEqual([])
    expect(gone).toBe(0)
  })

  test('can answer the warning any number of times', () => {
    for (let at = 0; at < 25; at++) {
      hand.pass(QUIET + GRACE - 1)
      expect(told.at(-1)).toBe(1)
      sitting.touch()
      expect(told.at(-1)).toBeNull()
    }
    expect(gone).toBe(0)
  })

  test('who ends the visit is not watched any more', () => {
    sitting.end()
    hand.pass(QUIET + GRACE)
    expect([told, gone, hand.running()]).toEqual([[], 0, 0])
  })
})

describe('the countdown is spoken', () => {
  test('at sixty, thirty and ten seconds, not every second', () => {
    const heard = Array.from({ length: 60 }, (_, at) => spokenSeconds(60 - at))
    expect([...new Set(heard)]).toEqual([60, 30, 10])
    expect([spokenSeconds(31), spokenSeconds(30), spokenSeconds(10)]).toEqual([60, 30, 10])
  })
})
