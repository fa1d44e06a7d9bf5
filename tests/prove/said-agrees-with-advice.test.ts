import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { TreeDiagrams } from '../../src/diagrams/tree-diagrams.ts'
import { adviceFor } from '../../src/evaluate/advice.ts'
import { walk } from '../../src/evaluate/walk.ts'
import { everything, isUsual } from '../../src/prove/open.ts'
import { comesLate } from '../../src/prove/said/order.ts'
import { saidOf } from '../../src/prove/said/said.ts'
import { completed, type ValueChoice } from '../../src/prove/witness.ts'
import { shippedTrees } from '../helpers/shipped.ts'

/** Mostly what an ordinary jar shows, so that not every set comes to the most cautious of all. */
const choices = (compiled: TreeDiagrams): fc.Arbitrary<ValueChoice> =>
  fc
    .tuple(
      ...compiled.variables.map(variable => {
        const usual = variable.values.findIndex(value => isUsual(compiled.tree, variable, value))
        const any = fc.nat({ max: variable.values.length - 1 })
        return usual < 0 ? any : fc.oneof({ weight: 6, arbitrary: fc.constant(usual) }, any)
      })
    )
    .map(values => new Map(values.map((value, index) => [index, value])))

/** Whether a diagram is 1 for a choice of every value. */
function holds({ diagrams }: TreeDiagrams, diagram: number, choice: ValueChoice): boolean {
  let at = diagram
  while (!diagrams.isConstant(at)) {
    at = diagrams.childrenOf(at)[choice.get(diagrams.variableOf(at)) as number] as number
  }
  return at === 1
}

describe('the diagrams of what is said agree with what adviceFor says', async () => {
  test.each(await shippedTrees())('$id, on random sets of answers', tree => {
    const whole = saidOf(tree)
    const { compiled, sentences, spots } = whole
    const open = everything(compiled)
    const late = (step: string, before: string) => {
      const of = (id: string) => spots.filter(spot => spot.step === id)
      return comesLate(whole, of(step), of(before))
    }
    fc.assert(
      fc.property(choices(compiled), choice => {
        const answers = completed(compiled, choice, open)
        const advice = adviceFor(tree, walk(tree, answers).outcome, answers)
        const { doNow, later, clean, keep, startAgain, notes, change, followUps } = advice
        const heard = sentences.filter(({ said }) => holds(compiled, said, choice))
        const ids = (kind: string) =>
          heard.flatMap(each => (each.kind === kind ? [each.id] : [])).sort()
        expect(ids('step')).toEqual([...new Set([...doNow, ...later, ...clean, ...keep])].sort())
        expect(ids('new-start')).toEqual([...startAgain].sort())
        expect(ids('note')).toEqual([...new Set([...notes, ...change])].sort())
        expect(ids('follow-up')).toEqual(followUps.map(({ id }) => id).sort())
        const outOfOrder = clean
          .slice(1)
          .filter((step, at) => holds(compiled, late(clean[at] as string, step), choice))
        expect(outOfOrder).toEqual([])
      }),
      { numRuns: 400 }
    )
  })
})
