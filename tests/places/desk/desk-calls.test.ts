import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate.ts'
import type { Answer, Answers } from '../../../src/tree/answers.ts'
import { TRACKS } from '../../../src/tree/observation.ts'
import { measured } from '../../../src/tree/reading.ts'
import type { Tree } from '../../../src/tree/tree.ts'
import { CALLS, type DeskCall } from '../../browser/desk-calls.ts'
import { loadShipped } from '../../helpers/shipped.ts'
import { usualExcept } from '../../helpers/usual.ts'

const { trees, rows } = await loadShipped()

/** What the caller of a call answers, as the tree takes it. */
function answersOf(tree: Tree, told: DeskCall['told']): Answers {
  return Object.fromEntries(
    Object.entries(told).flatMap(([id, answer]): readonly (readonly [string, Answer])[] => {
      const about = tree.observations[id]
      if (about === undefined) return []
      if (typeof answer === 'string') return about.kind === 'signs' ? [] : [[id, answer]]
      const [reading = '', instrument] = answer
      if (about.kind === 'measure') return [[id, measured(about, Number(reading), instrument)]]
      return [[id, Object.fromEntries(answer.map(sign => [sign, 'yes'] as const))]]
    })
  )
}

describe.each(Object.entries(CALLS))('the call of %s', (_, { row: [id, title], told, comesTo }) => {
  const tree = trees.find(each => each.id === id)
  const row = rows[id]?.find(each => each.title === title)

  test('comes to what its row of the guidance says, and to what the tree says', () => {
    expect.assert(tree !== undefined && row !== undefined)
    const { outcome } = evaluate(tree, usualExcept(tree, answersOf(tree, told))).walk
    expect.assert(outcome !== null)
    expect(outcome).toMatchObject(row.expect)
    const verdicts = TRACKS.flatMap(track => outcome[track] ?? [])
    // What is urgent comes first, the batch after it.
    const rank = (id: string) => tree.advice.urgency.indexOf(id) + 1 || Infinity
    expect(comesTo).toEqual({
      verdicts: verdicts.sort((a, b) => rank(a) - rank(b)),
      use: outcome.use
    })
  })

  test('tells what its row tells', () => {
    expect.assert(tree !== undefined && row !== undefined)
    const answers = answersOf(tree, told)
    for (const [observation, answer] of Object.entries(row.told)) {
      // An interval of a row may be of another instrument: the reading is what was told.
      const given = answers[observation]
      if (typeof answer === 'object' && 'reading' in answer) {
        expect(given).toMatchObject({ reading: answer.reading })
      } else expect(given).toEqual(answer)
    }
  })
})
