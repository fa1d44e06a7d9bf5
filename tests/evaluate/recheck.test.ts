import { describe, expect, test } from 'vitest'
import { soonestRecheck } from '../../src/evaluate/recheck.ts'
import type { Answers } from '../../src/tree/answers.ts'
import type { Recheck, Tree } from '../../src/tree/tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'

const trees = await shippedTrees()
const counting = trees.flatMap(tree =>
  tree.countsDays === undefined ? [] : [[tree.id, tree, tree.countsDays] as const]
)
const days = (...all: number[]) => all.map(day => ({ recheck: { day } }))
const hours = (from: number, to: number) => ({ recheck: { hours: [from, to] as const } })
const on = (observation: string, day: number): Answers => ({
  [observation]: { low: day, reading: day, high: day }
})

describe('of several rechecks the soonest counts', () => {
  test.each(counting)('by the days of %s itself', (_, tree, counts) => {
    const soonest = (named: readonly { readonly recheck: Recheck }[], day: number) =>
      soonestRecheck(tree, named, [], on(counts, day))

    expect(soonest(days(10, 7), 0)).toEqual({ day: 7 })
    expect(soonest([...days(28), hours(48, 72)], 27)).toEqual({ day: 28 })
    expect(soonest([...days(28), hours(48, 72)], 20)).toEqual({ hours: [48, 72] })
  })

  test.each(counting)('a day of %s that has come is today', (_, tree, counts) => {
    expect(soonestRecheck(tree, days(7, 28), [], on(counts, 9))).toEqual({ hours: [0, 24] })
  })

  test('where nobody knows the day, hours come first', () => {
    const [, tree] = counting[0] as (typeof counting)[number]
    expect(soonestRecheck(tree as Tree, [...days(7), hours(48, 72)], [], {})).toEqual({
      hours: [48, 72]
    })
  })

  test('every tree that waits for a day of its own says what counts it', () => {
    for (const tree of trees) {
      const waits = Object.values(tree.advice.notes).some(note => 'day' in (note.recheck ?? {}))
      if (waits) expect(tree.countsDays).toBeDefined()
    }
    expect(counting.length).toBeGreaterThan(3)
  })
})
