import type { Interval } from '../../src/tree/answers.ts'
import type { MeasureObservation, Range } from '../../src/tree/observation.ts'
import { holds, holdsAll } from '../../src/tree/range.ts'
import { measured } from '../../src/tree/reading.ts'
import type { Tree } from '../../src/tree/tree.ts'

/** How far beside a limit a reading is drawn: a hundredth of pH; of a count the next one. */
const BESIDE = 0.01

const kept = new WeakMap<Tree, Map<string, readonly Interval[]>>()

/**
 * Raw readings of a measure, one for each way in which the ranges that are written in the tree and its
 * rules can judge a reading. They are read off inside, on and beside every limit, with each instrument
 * and with none, and span as much as two readings can. Nothing of the bands of the proofs is used.
 */
export function rawReadings(tree: Tree, measure: MeasureObservation): readonly Interval[] {
  const ofTree = kept.get(tree) ?? new Map<string, readonly Interval[]>()
  kept.set(tree, ofTree)
  const before = ofTree.get(measure.id)
  if (before !== undefined) return before
  const judges = judgesOf(tree, measure)
  const groups = new Map<string, Interval[]>()
  for (const interval of drawn(measure, judges.limits)) {
    const key = judges.all.map(judge => (judge(interval) ? '1' : '0')).join('')
    groups.set(key, [...(groups.get(key) ?? []), interval])
  }
  // Which of those that are judged alike stands for them differs from tree to tree.
  const found = [...groups.values()].flatMap((group, index) => {
    const one = group[(index * 7 + Object.keys(tree.questions).length * 3) % group.length]
    return one === undefined ? [] : [one]
  })
  ofTree.set(measure.id, found)
  return found
}

type Judge = (interval: Interval) => boolean

/** Whatever is written of a measure's readings: what questions, tastes, rules and the usual range hold. */
function judgesOf(tree: Tree, { id, usual }: MeasureObservation) {
  const whole: Range[] = usual === undefined ? [] : [usual]
  const tastes: Range[] = []
  const straddled: number[] = []
  for (const question of Object.values(tree.questions)) {
    if (question.kind !== 'measure' || question.asks !== id) continue
    whole.push(...question.ranges.map(({ range }) => range))
    tastes.push(...question.taste.map(({ range }) => range))
  }
  for (const { when, unless } of tree.rules) {
    for (const condition of [...when, ...unless.flat()]) {
      if (condition.kind !== 'measure' || condition.observation !== id) continue
      if (condition.is === 'unsure') continue
      if ('within' in condition.is) whole.push(condition.is.within)
      else straddled.push(condition.is.straddles)
    }
  }
  const numbers = [...whole, ...tastes].flatMap(({ atLeast, over, under, atMost }) =>
    [atLeast, over, under, atMost].filter(limit => limit !== undefined)
  )
  const all: readonly Judge[] = [
    ...whole.map(
      (range): Judge =>
        interval =>
          holdsAll(range, interval)
    ),
    ...tastes.map(
      (range): Judge =>
        interval =>
          holds(range, interval.reading)
    ),
    ...straddled.map(
      (limit): Judge =>
        ({ low, high }) =>
          low <= limit && limit < high
    )
  ]
  return { all, limits: [...new Set([...numbers, ...straddled])] }
}

function drawn(measure: MeasureObservation, limits: readonly number[]): readonly Interval[] {
  const isCount = measure.instruments.length === 0
  const beside = isCount ? 1 : BESIDE
  const spots = new Set(
    limits.length === 0 ? [3] : limits.flatMap(limit => [limit - beside, limit, limit + beside])
  )
  for (const one of limits) {
    for (const other of limits) {
      const middle = (one + other) / 2
      spots.add(isCount ? Math.floor(middle) : middle)
    }
  }
  if (isCount) {
    return [...spots].map(reading => ({ low: reading, reading, high: reading }))
  }
  const read = [...spots].flatMap(reading =>
    [undefined, ...measure.instruments.map(({ id }) => id)].map(instrument =>
      measured(measure, reading, instrument)
    )
  )
  const sorted = [...spots].sort((a, b) => a - b)
  // What two readings that contradict each other span, or what was worked out from plain quantities.
  const spans = sorted.flatMap((low, first) =>
    sorted
      .slice(first)
      .flatMap((high, further) =>
        sorted.slice(first, first + further + 1).map(reading => ({ low, reading, high }))
      )
  )
  return [...read, ...spans]
}
