import { describe, expect, test } from 'vitest'
import { walk } from '../../src/evaluate/walk.ts'
import { follow, isSaid } from '../../src/plain/follow.ts'
import type { PlainWalk } from '../../src/plain/stop.ts'
import { unfold } from '../../src/plain/unfold.ts'
import { randomNumbers } from '../../src/science/random-numbers.ts'
import { lensesOf } from '../../src/tables/tables.ts'
import type { Answers } from '../../src/tree/answers.ts'
import { EMERGENCY } from '../../src/tree/emergency.ts'
import { at } from '../../src/tree/must.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'
import { randomAnswers } from '../tables/table-answers.ts'
import { readable, rowOf } from './readable-answers.ts'

/** Rows drawn from the table of each side and note of each tree. */
const ROWS = 4
/** Sets of answers drawn for each tree, from nearly in order to everything wrong. */
const SETS = 150

/** What the links say otherwise than the walk; nothing where they say the same. */
function difference(tree: Tree, plain: PlainWalk, answers: Answers): string | null {
  const followed = follow(tree, plain, answers)
  const { always, perhaps, ...end } = at(plain.ends, followed.end)
  const { finished, outcome } = walk(tree, followed.asked)
  const { notes, ...reached } = outcome
  // An emergency is told at once, also where the walk would go on to ask.
  if (end.person === EMERGENCY && outcome.person === EMERGENCY) return null
  const conditional = [...perhaps].filter(([, whens]) =>
    whens.some(when => isSaid(tree, followed, when))
  )
  const linked = [...always, ...conditional.map(([note]) => note)]
  const said = JSON.stringify([finished, reached, [...notes].sort()])
  const read = JSON.stringify([true, end, linked.sort()])
  const trail = walk(tree, followed.asked).trail.map(({ question }) => question)
  return said === read
    ? null
    : `${JSON.stringify(followed.asked)}\n  walk ${said} ${trail}\n  links ${read} ${[...followed.said.keys()]}`
}

describe('whoever follows the links comes to the outcome of the walk, with its notes', () => {
  test('for rows of every decision table, and for answers of every kind', async () => {
    const apart: string[] = []
    let tried = 0
    for (const tree of await shippedTrees()) {
      const plain = unfold(tree)
      const next = randomNumbers(20261130)
      const rows = lensesOf(tree).flatMap(lens =>
        Array.from({ length: ROWS }, () => rowOf(tree, lens, randomAnswers(tree, next), next))
      )
      const sets = Array.from({ length: SETS }, () => readable(tree, randomAnswers(tree, next)))
      for (const answers of [...rows, ...sets]) {
        tried += 1
        const different = difference(tree, plain, answers)
        if (different !== null) apart.push(`${tree.id}: ${different}`)
      }
    }
    expect(apart.slice(0, 3)).toEqual([])
    expect(tried).toBeGreaterThan(4_500)
  })
})
