import { describe, expect, test } from 'vitest'
import { type Attempt, lineOfAttempt, readAttempt } from '../../src/practice/attempt.ts'
import { apartOn, byVolunteer, eachOnce, practiceScore } from '../../src/practice/score.ts'
import { kappa } from '../../src/science/agreement.ts'
import { shippedTrees } from '../helpers/shipped.ts'

const [tree] = await shippedTrees()
const verdicts = tree?.verdicts ?? []
const GENTLE = {
  person: null,
  container: null,
  batch: 'normal-growth',
  use: 'as-directed'
} as const
const MOLD = { person: null, container: null, batch: 'likely-mold', use: 'never' } as const
const WAIT = { person: null, container: null, batch: 'wait-and-recheck', use: 'not-yet' } as const
const CALL_911 = { person: 'emergency', container: null, batch: null, use: 'never' } as const
const POISON = {
  person: 'poison-help',
  container: null,
  batch: 'likely-mold',
  use: 'never'
} as const

let made = 0
function attempt(
  given: Attempt['given'],
  expected: Attempt['expected'],
  more: Partial<Attempt> = {}
): Attempt {
  made += 1
  return {
    id: `attempt-${made}`,
    caller: 'white-fuzz',
    tree: 'kombucha-jar',
    took: 'kombucha-jar',
    fingerprint: 'abcdef0123456789',
    volunteer: 7,
    day: '2026-11-29',
    given,
    expected,
    ...more
  }
}

describe('a score', () => {
  test('counts a danger as seen only where the volunteer was as cautious as the tree', () => {
    const calls = [
      attempt(MOLD, MOLD),
      attempt(WAIT, MOLD),
      attempt(CALL_911, CALL_911),
      attempt(POISON, CALL_911),
      // The mold was seen and the person was not.
      attempt(MOLD, POISON),
      attempt(GENTLE, GENTLE)
    ]
    const { seen, missed, falseAlarms } = practiceScore(calls, verdicts)
    expect(seen).toMatchObject({ value: 0.4, of: 5 })
    expect(seen?.low).toBeCloseTo(0.0527, 4)
    expect(seen?.high).toBeCloseTo(0.8534, 4)
    expect(missed).toEqual([calls[1], calls[3], calls[4]])
    expect(falseAlarms).toMatchObject({ value: 0, of: 1 })
  })

  test('of a volunteer who is always gentler says so, by side and by how many levels', () => {
    const biased = [attempt(GENTLE, WAIT), attempt(GENTLE, MOLD), attempt(GENTLE, GENTLE)]
    const { batch, use, person } = practiceScore(biased, verdicts).sides
    expect(batch).toMatchObject({ compared: 3, same: 1, gentle: 2, strict: 0 })
    const levels = verdicts.filter(({ track }) => track === 'batch').map(({ id }) => id)
    const down = (id: string) => levels.indexOf('normal-growth') - levels.indexOf(id)
    expect(batch.apart).toEqual({
      0: 1,
      [down('wait-and-recheck')]: 1,
      [down('likely-mold')]: 1
    })
    expect(use).toMatchObject({ gentle: 2, strict: 0 })
    expect(person).toMatchObject({ same: 3, kappa: null })
  })

  test('counts a false alarm, and it is too strict', () => {
    const { falseAlarms, sides, seen } = practiceScore([attempt(MOLD, GENTLE)], verdicts)
    expect(falseAlarms).toMatchObject({ value: 1, of: 1 })
    expect(sides.batch.strict).toBe(1)
    expect(seen).toBeNull()
  })

  test('compares in an emergency the person alone', () => {
    const missed = attempt(GENTLE, CALL_911)
    expect(apartOn('batch', missed, verdicts)).toBeNull()
    expect(apartOn('person', missed, verdicts)).toBe(-4)
    expect(practiceScore([missed], verdicts).sides.batch.compared).toBe(0)
  })

  test('has the kappa of the table of its verdicts', () => {
    const calls = [
      ...Array.from({ length: 6 }, () => attempt(GENTLE, GENTLE)),
      ...Array.from({ length: 3 }, () => attempt(GENTLE, WAIT)),
      ...Array.from({ length: 5 }, () => attempt(WAIT, WAIT))
    ]
    const { kappa: found } = practiceScore(calls, verdicts).sides.use
    const table = [
      [6, 3, 0],
      [0, 5, 0],
      [0, 0, 0]
    ]
    expect(found?.value).toBe(kappa(table, 'linear').kappa)
  })

  test('of no call tells nothing', () => {
    expect(practiceScore([], verdicts)).toMatchObject({ calls: 0, seen: null, falseAlarms: null })
  })
})

describe('the lines of practice calls', () => {
  const one = attempt(WAIT, MOLD)

  test('are read back as they were', () => {
    expect(readAttempt(lineOfAttempt(one), verdicts)).toEqual({ attempt: one })
  })

  test.each([
    ['{', 'it is no JSON'],
    ['[]', 'a line is no group'],
    ['{"contact":1}', 'it is no practice call'],
    [lineOfAttempt({ ...one, volunteer: 0 }), 'its `volunteer` is no number from 1 to 9999'],
    [lineOfAttempt({ ...one, day: 'today' }), 'its `day` cannot be'],
    [
      lineOfAttempt({ ...one, given: { ...MOLD, batch: 'emergency' } }),
      'its `given` has no verdict `emergency` on `batch`'
    ]
  ])('%s says what is wrong', (line, fault) => {
    expect(readAttempt(line, verdicts)).toEqual({ fault })
  })

  test('of two files count once, by volunteer', () => {
    const other = attempt(MOLD, MOLD, { volunteer: 3 })
    const all = eachOnce([one, other, one])
    expect(all).toHaveLength(2)
    expect(byVolunteer(all).map(([volunteer, calls]) => [volunteer, calls.length])).toEqual([
      [3, 1],
      [7, 1]
    ])
  })
})
