import { describe, expect, test } from 'vitest'
import {
  ADVICE_KINDS,
  type AdviceFault,
  adviceFaultsOf
} from '../../src/prove/faults/advice-faults.ts'
import { adviceScoreOf } from '../../src/prove/faults/advice-score.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { loadShipped } from '../helpers/shipped.ts'

// Every slip in what every tree says takes minutes: `jarside check --faults`.
const SAMPLE = 6
/** The pieces alone bring fewer: a tree with more says by rule of its own what must be heard. */
const OF_PIECES = 20

const { trees, sources, faultScores } = await loadShipped()
const own = trees.filter(({ spokenRules }) => spokenRules.length > OF_PIECES)

describe('a slip in what a tree says', () => {
  test.each(trees)('of $id is of each kind, and leaves what it asks alone', tree => {
    const faults = adviceFaultsOf(tree)
    expect([...new Set(faults.map(({ kind }) => kind))].sort()).toEqual([...ADVICE_KINDS].sort())
    const same = ({ tree: faulty }: AdviceFault) =>
      faulty.questions === tree.questions && faulty.advice !== tree.advice
    expect(faults.every(same)).toBe(true)
  })

  test.each(own)('of $id is found by its rules of what is said and by the laws', tree => {
    const every = Math.ceil(adviceFaultsOf(tree).length / SAMPLE)
    const { faults, survivors } = adviceScoreOf(tree, sources, every)
    expect(faults).toBeGreaterThan(SAMPLE / 2 - 1)
    expect(survivors.filter(name => !Object.hasOwn(tree.unfoundFaults, name))).toEqual([])
  })

  // Each slip that is not found has been through every law: one tree shows that the rules are needed.
  test('is often found by nothing else', () => {
    const [tree] = own
    expect.assert(tree)
    const silent: Tree = { ...tree, spokenRules: [] }
    const every = Math.ceil(adviceFaultsOf(tree).length / SAMPLE)
    expect(adviceScoreOf(silent, sources, every).survivors.length).toBeGreaterThan(0)
  })
})

// Of a tree that nobody measured yet `jarside check` says so.
describe('the recorded score of what a tree says', () => {
  const recorded = own.filter(({ id }) => Object.hasOwn(faultScores, id))

  test.each(recorded)('of $id is nearly whole', ({ id }) => {
    const { faults = 0, found = 0 } = faultScores[id]?.advice ?? {}
    expect(faults).toBeGreaterThan(100)
    expect(found / faults).toBeGreaterThanOrEqual(0.98)
  })
})
