import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { adviceFor } from '../../src/evaluate/advice.ts'
import { cannotWait, MOST_FIRST, parted, USUAL_FIRST } from '../../src/evaluate/first-steps.ts'
import { walk } from '../../src/evaluate/walk.ts'
import { EMERGENCY } from '../../src/tree/emergency.ts'
import { completeAnswers } from '../helpers/random-tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'

const named = (does: Parameters<typeof cannotWait>[0][]) => ({
  advice: { does: Object.fromEntries(does.map((one, at) => [`${at}`, one])) } as never
})
const steps = (many: number) => Array.from({ length: many }, (_, at) => `${at}`)

describe('steps are parted', () => {
  test('five stand first, the others after them, in their order', () => {
    expect(parted(named([]), steps(7))).toEqual({
      first: ['0', '1', '2', '3', '4'],
      later: ['5', '6']
    })
  })

  test('what cannot wait is first, wherever it stood; what can is last', () => {
    const tree = named([{ later: true }, {}, {}, {}, {}, {}, { call: { 'poison-help': 'now' } }])
    expect(parted(tree, steps(7))).toEqual({ first: ['1', '2', '3', '4', '6'], later: ['5', '0'] })
    // Where there is room for all, nothing is folded.
    expect(parted(tree, steps(4))).toEqual({ first: ['1', '2', '3', '0'], later: [] })
  })

  test('that nobody is to have any is said first once', () => {
    const none = { use: 'none' } as const
    const tree = named([{}, {}, {}, {}, {}, none, none])
    expect(parted(tree, steps(7))).toEqual({
      first: ['0', '1', '2', '3', '5'],
      later: ['4', '6']
    })
  })
})

describe('of any caller', async () => {
  test.each(await shippedTrees())('in $id nothing is lost, and nothing urgent is folded', tree => {
    const { does } = tree.advice
    const seen = { folded: 0, whole: 0 }
    fc.assert(
      fc.property(completeAnswers(tree), answers => {
        const { outcome } = walk(tree, answers)
        const { doNow, later } = adviceFor(tree, outcome, answers)
        seen[later.length > 0 ? 'folded' : 'whole']++
        expect(new Set([...doNow, ...later]).size).toBe(doNow.length + later.length)
        expect(doNow.length).toBeLessThanOrEqual(MOST_FIRST)
        expect(later.filter(step => cannotWait(does[step]))).toEqual([])
        if (doNow.length > USUAL_FIRST && outcome.person !== EMERGENCY) {
          const others = doNow.filter(step => !cannotWait(does[step]))
          expect(others.length).toBeLessThanOrEqual(1)
        }
      }),
      { numRuns: 300 }
    )
    expect(seen.folded).toBeGreaterThan(10)
  })
})
