import type { Answer, Answers } from '../../src/tree/answers.ts'
import { cutsOn } from '../../src/tree/bands.ts'
import type { MeasureObservation, Observation, Unit } from '../../src/tree/observation.ts'
import { measured, rounded } from '../../src/tree/reading.ts'
import type { Tree } from '../../src/tree/tree.ts'

/** A complete set of answers: from jars that are nearly in order to jars with everything wrong. */
export function randomAnswers(tree: Tree, next: () => number): Answers {
  const trouble = pick([0.01, 0.04, 0.15, 0.5], next)
  return Object.fromEntries(
    Object.values(tree.observations).map(each => [each.id, randomAnswer(each, trouble, next)])
  )
}

function randomAnswer(observation: Observation, trouble: number, next: () => number): Answer {
  switch (observation.kind) {
    case 'choice': {
      const usual = observation.answers.filter(answer => answer.usual)
      const all = next() < trouble * 2 || usual.length === 0 ? observation.answers : usual
      return next() < trouble ? 'unsure' : pick(all, next).id
    }
    case 'signs':
      return Object.fromEntries(
        observation.signs.map(({ id }) => [
          id,
          next() < trouble ? pick(['yes', 'unsure'], next) : 'no'
        ])
      ) as Answer
    case 'measure': {
      if (next() < 0.15) return 'unsure'
      const { from, to } = observation.span
      const [low, high] = REACH[observation.unit] ?? [from, to]
      const drawn = low + next() * (high - low)
      if (observation.instruments.length === 0) return measured(observation, Math.floor(drawn))
      const value = Math.round(drawn * 100) / 100
      return measured(observation, value, pick([...instrumentsOf(observation)], next))
    }
  }
}

/** Where the limits lie: readings from far away would all come to the same. */
const REACH: Readonly<Partial<Record<Unit, readonly [number, number]>>> = {
  ph: [2, 5.5],
  day: [0, 40]
}

/** Every instrument, and none named. */
function instrumentsOf({ instruments }: MeasureObservation): readonly (string | undefined)[] {
  return [...instruments.map(({ id }) => id), undefined]
}

/** Just below, at and just above each limit of a measure: for its low, its reading and its high, with each instrument. */
export function boundaries(tree: Tree, measure: MeasureObservation): readonly Answer[] {
  const { instruments, span } = measure
  const widest = Math.max(0, ...instruments.map(({ plusMinus }) => plusMinus))
  return instrumentsOf(measure).flatMap(instrument => {
    const by = instruments.find(({ id }) => id === instrument)?.plusMinus ?? widest
    const values = cutsOn(tree, measure).flatMap(({ at }) =>
      [-by, 0, by].flatMap(off => [-0.001, 0, 0.001].map(step => rounded(at + off + step)))
    )
    return [...new Set(values)]
      .filter(value => value >= span.from && value <= span.to)
      .map(value => measured(measure, value, instrument))
  })
}

function pick<T>(all: readonly T[], next: () => number): T {
  return all[Math.floor(next() * all.length)] as T
}
