import { expect, test } from 'vitest'
import { adviceFor } from '../../src/evaluate/advice.ts'
import { isRuledOut } from '../../src/evaluate/presumed.ts'
import { saidOnce } from '../../src/evaluate/said-once.ts'
import { walk } from '../../src/evaluate/walk.ts'
import { type EndPage, endPage, stepsOf } from '../../src/plain/end-blocks.ts'
import { type Followed, follow, isSaid } from '../../src/plain/follow.ts'
import { unfold } from '../../src/plain/unfold.ts'
import { randomNumbers } from '../../src/science/random-numbers.ts'
import { EMERGENCY } from '../../src/tree/emergency.ts'
import { at } from '../../src/tree/must.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'
import { randomAnswers } from '../tables/table-answers.ts'
import { readable } from './readable-answers.ts'

const SETS = 120

/** What somebody reads on the page of an end who reads the lines alone about what was said. */
function read(tree: Tree, page: EndPage, followed: Followed) {
  const { outcome, blocks, presumed } = page
  const base = adviceFor(tree, outcome, {})
  const mine = blocks.filter(
    ({ whens, unless }) =>
      whens.some(when => isSaid(tree, followed, when)) &&
      !unless.some(when => isSaid(tree, followed, when))
  )
  const out = new Set(mine.flatMap(({ leaveOut }) => leaveOut))
  const steps = [...stepsOf(base), ...mine.flatMap(({ also }) => also)].filter(
    step => !out.has(step)
  )
  const replaced = steps.flatMap(step => {
    const does = tree.advice.does[step]
    const one = presumed.find(each => each.step === step)
    return one && does && isRuledOut(tree, does, followed.asked) ? one.otherwise : [step]
  })
  return {
    steps: [...new Set(replaced)],
    notes: [...base.notes, ...mine.flatMap(({ note, says }) => (says ? [note] : []))].filter(
      note => !out.has(note)
    ),
    calls: [...new Set([...base.refer, ...mine.flatMap(({ calls }) => calls)])]
  }
}

test('whoever reads what was said on the way reads every step, note and call of the report', async () => {
  const wrong: string[] = []
  let steps = 0
  let more = 0
  for (const tree of await shippedTrees()) {
    const plain = unfold(tree)
    const pages = plain.ends.map(end => endPage(tree, end))
    const next = randomNumbers(20261201)
    for (let i = 0; i < SETS; i++) {
      const followed = follow(tree, plain, readable(tree, randomAnswers(tree, next)))
      if (at(plain.ends, followed.end).person === EMERGENCY) continue
      const { outcome } = walk(tree, followed.asked)
      const advice = adviceFor(tree, outcome, followed.asked)
      const linked = read(tree, at(pages, followed.end), followed)
      const spoken = stepsOf(advice)
      const missing = [
        // "Call if it gets worse" stands where another line has said to call already.
        ...spoken.filter(
          step =>
            !linked.steps.includes(step) &&
            !linked.steps.some(other => tree.advice.does[other]?.onceCalled?.includes(step))
        ),
        ...advice.notes.filter(note => !linked.notes.includes(note)),
        ...advice.refer.filter(call => !linked.calls.includes(call))
      ]
      // A step that says less than another stands beside it on paper; no other may be too many.
      const once = saidOnce(tree, linked.steps)
      const extra = [
        ...linked.steps.filter(step => !spoken.includes(step) && once.includes(step)),
        ...linked.notes.filter(note => !advice.notes.includes(note)),
        ...linked.calls.filter(call => !advice.refer.includes(call))
      ]
      steps += spoken.length
      more += linked.steps.length - spoken.length
      if (missing.length + extra.length > 0)
        wrong.push(`${tree.id}: not there ${missing}; too many ${extra}`)
    }
  }
  expect({ wrong: wrong.slice(0, 12), count: wrong.length, steps, more }).toMatchObject({
    wrong: []
  })
})
