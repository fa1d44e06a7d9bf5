import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { progressOf } from '../../src/evaluate/progress.ts'
import { walk } from '../../src/evaluate/walk.ts'
import type { Answer, Answers, SignValue } from '../../src/tree/answers.ts'
import type { Observation } from '../../src/tree/observation.ts'
import { measured } from '../../src/tree/reading.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { openShipped } from '../helpers/shipped.ts'

const { loaded } = await openShipped()
const trees = loaded.trees.map(tree => [tree.id, tree] as const)

type Pick = (below: number) => number

function anyAnswer(observation: Observation, pick: Pick): Answer {
  if (observation.kind === 'choice') {
    const answers = [...observation.answers.map(({ id }) => id), 'unsure']
    return answers[pick(answers.length)] ?? 'unsure'
  }
  if (observation.kind === 'measure') {
    const { from, to } = observation.span
    // Readings where trees draw their limits: days up to six weeks, and every tenth of a pH.
    const steps = observation.unit === 'day' ? 42 : 10 * Math.min(to - from, 14)
    const value = from + pick(steps) / (observation.unit === 'day' ? 1 : 10)
    return pick(4) === 0 ? 'unsure' : measured(observation, value)
  }
  // Mostly no: a walk in which every danger sign shows is soon over.
  const values: SignValue[] = ['no', 'no', 'no', 'no', 'no', 'no', 'unsure', 'yes']
  const asked = observation.signs.filter(({ volunteered }) => !volunteered)
  return Object.fromEntries(asked.map(({ id }) => [id, values[pick(values.length)] ?? 'no']))
}

/** Answers a walk to its end; gives the most questions that were promised before each. */
function promises(tree: Tree, pick: Pick): number[] {
  const promised: number[] = []
  let answers: Answers = {}
  for (let walked = walk(tree, answers); walked.asks; walked = walk(tree, answers)) {
    const { question, atMostMore } = progressOf(tree, answers, walked)
    expect(question).toBe(promised.length + 1)
    promised.push(question + atMostMore)
    const observation = tree.observations[walked.asks.observation]
    if (!observation) throw new Error('a question asks nothing')
    answers = { ...answers, [observation.id]: anyAnswer(observation, pick) }
  }
  return promised
}

describe('progress is honest', () => {
  test.each(trees)('%s: what is promised is kept, and never grows', (_, tree) => {
    fc.assert(
      fc.property(fc.infiniteStream(fc.nat({ max: 2 ** 20 })), numbers => {
        const promised = promises(tree, below => Number(numbers.next().value) % below)

        expect(Math.min(...promised)).toBeGreaterThanOrEqual(promised.length)
        expect(promised).toEqual([...promised].sort((a, b) => b - a))
      }),
      { numRuns: 60 }
    )
  })

  test('the untold jar promises no more screens than its longest walk may have', () => {
    const jar = loaded.trees.find(({ id }) => id === 'kombucha-jar') as Tree
    const { question, atMostMore } = progressOf(jar, {}, walk(jar, {}))
    // Its walks ask fourteen things at most, signs of lead among them; one too many may be promised, never too few.
    expect(question + atMostMore).toBeLessThanOrEqual(15)
  })
})
