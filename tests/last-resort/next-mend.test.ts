import { describe, expect, test } from 'vitest'
import { nextMend, type Trouble } from '../../src/last-resort/next-mend.ts'

const UNSHOWN: Trouble = { proven: false, restored: false, mended: false, reached: false }
const flags = [true, false]
const all = flags.flatMap(proven =>
  flags.flatMap(restored =>
    flags.flatMap(mended =>
      flags.map((reached): Trouble => ({ proven, restored, mended, reached }))
    )
  )
)

describe('a kiosk that shows no first screen', () => {
  test.each([
    [{}, 'wait'],
    [{ reached: true }, 'renew'],
    [{ mended: true, reached: true }, 'leave'],
    [{ proven: true }, 'restore'],
    [{ proven: true, reached: true }, 'restore'],
    [{ proven: true, restored: true }, 'wait'],
    [{ proven: true, restored: true, reached: true }, 'renew'],
    [{ proven: true, restored: true, mended: true, reached: true }, 'leave']
  ] as const)('and of which %j is so: %s', (known, next) => {
    expect(nextMend({ ...UNSHOWN, ...known })).toBe(next)
  })

  test('never throws anything away while a proven copy was not put back', () => {
    const thrown = all.filter(known => nextMend(known) === 'renew')
    expect(thrown.length).toBeGreaterThan(0)
    for (const { proven, restored, reached } of thrown) {
      expect(reached).toBe(true)
      expect(proven && !restored).toBe(false)
    }
  })

  test('ends after a copy was put back once and everything fetched once', () => {
    for (const start of all) {
      let known = start
      let steps = 0
      for (let next = nextMend(known); next === 'restore' || next === 'renew'; steps++) {
        known = next === 'restore' ? { ...known, restored: true } : { ...known, mended: true }
        next = nextMend(known)
      }
      expect(steps).toBeLessThanOrEqual(2)
    }
  })
})
