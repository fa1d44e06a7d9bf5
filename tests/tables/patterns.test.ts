import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { walk } from '../../src/evaluate/walk.ts'
import { randomNumbers } from '../../src/science/random-numbers.ts'
import { limitCasesOf } from '../../src/tables/limit-cases.ts'
import { patternsOf, patternsOfLevel, setsOfLevel } from '../../src/tables/patterns.ts'
import { lensesOf, tablesOf } from '../../src/tables/tables.ts'
import { emergenciesTold } from '../../src/tree/emergency.ts'
import { TRACKS } from '../../src/tree/observation.ts'
import { randomTree } from '../helpers/random-tree.ts'
import { fitsPattern, outputBy } from './pattern-facts.ts'
import { randomAnswers } from './table-answers.ts'
import { contextOf, inputsOf, rowsMet, saidByWalk } from './table-facts.ts'

const SIDES = [...TRACKS, 'use'] as const
const next = randomNumbers(11)

describe('the patterns of a side say what its decision tables say', () => {
  test('on random trees: the first level of which a pattern fits is the row’s, and the walk’s', () => {
    let compared = 0
    fc.assert(
      fc.property(randomTree, tree => {
        for (const lens of SIDES) {
          const tables = tablesOf(tree, lens)
          const inputs = inputsOf(tables)
          const side = patternsOf(tree, lens)
          for (let i = 0; i < 20; i++) {
            const answers = randomAnswers(tree, next)
            if (emergenciesTold(tree, answers).length > 0) continue
            const rows = rowsMet(tables, contextOf(tree, inputs, answers))
            const ofTables = rows.map(({ level }) => tables[0]?.outputs[level])
            expect([outputBy(tree, side, answers)]).toEqual(ofTables)
            expect(ofTables).toEqual([saidByWalk(tree, lens, answers)])
            compared++
          }
        }
      }),
      { numRuns: 30, seed: 5 }
    )
    expect(compared).toBeGreaterThan(1000)
  })

  test('on random trees: sets are counted once for each level, and none is left out', () => {
    fc.assert(
      fc.property(randomTree, tree => {
        for (const lens of SIDES) {
          const { sets, levels } = patternsOf(tree, lens)
          expect(levels.reduce((sum, one) => sum + one.sets, 0n)).toBe(sets)
          for (const { level, sets: exactly, patterns } of levels) {
            expect(setsOfLevel(tree, lens, level)).toBe(exactly)
            for (const pattern of patterns) expect(pattern.sets > 0n).toBe(true)
          }
        }
      }),
      { numRuns: 40, seed: 6 }
    )
  })

  test('a note is said exactly where one of its patterns fits', () => {
    fc.assert(
      fc.property(randomTree, tree => {
        for (const lens of lensesOf(tree).filter(one => typeof one === 'object')) {
          const patterns = patternsOfLevel(tree, lens, 1)
          for (let i = 0; i < 10; i++) {
            const answers = randomAnswers(tree, next)
            if (emergenciesTold(tree, answers).length > 0) continue
            const fits = patterns?.some(({ when }) => fitsPattern(tree, when, answers))
            expect(fits).toBe(walk(tree, answers).outcome.notes.includes(lens.note))
          }
        }
      }),
      { numRuns: 40, seed: 7 }
    )
  })

  test('more patterns than were asked for are none, not some', () => {
    let none = 0
    fc.assert(
      fc.property(randomTree, tree => {
        for (const lens of lensesOf(tree)) {
          const all = patternsOfLevel(tree, lens, 1) ?? []
          const few = patternsOfLevel(tree, lens, 1, 1)
          if (few === null) none++
          else expect(few.length).toBe(Math.min(1, all.length))
        }
      }),
      { numRuns: 40, seed: 8 }
    )
    expect(none).toBeGreaterThan(0)
  })
})

describe('at a limit', () => {
  test('every outcome is the walk’s, and readings stand on both sides', () => {
    let sides = 0
    fc.assert(
      fc.property(randomTree, tree => {
        for (const { measure, limit, cases } of limitCasesOf(tree)) {
          for (const { cases: each } of cases) {
            for (const { answers, interval, outcome } of each) {
              expect(answers[measure]).toEqual(interval)
              expect(walk(tree, answers).outcome).toEqual(outcome)
            }
            const outcomes = new Set(each.map(({ outcome }) => JSON.stringify(outcome)))
            expect(outcomes.size).toBeGreaterThan(1)
            expect(each[0]?.interval.low).toBeLessThanOrEqual(limit)
            expect(each.at(-1)?.interval.high).toBeGreaterThanOrEqual(limit)
            sides++
          }
        }
      }),
      { numRuns: 60, seed: 10 }
    )
    expect(sides).toBeGreaterThan(20)
  })
})
