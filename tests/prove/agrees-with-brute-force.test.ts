import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { proveRule } from '../../src/prove/prove-rule.ts'
import { proveUnsure } from '../../src/prove/prove-unsure.ts'
import { useLevel } from '../../src/tree/caution.ts'
import { holdsAll } from '../../src/tree/range.ts'
import { spaceOf, withValue } from '../../src/tree/space.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { TreeDiagrams } from '../../src/tree/tree-diagrams.ts'
import { walk } from '../../src/tree/walk.ts'
import { everySet, ruleHolds, sizeOf } from '../helpers/brute-force.ts'
import { randomRule, randomTree } from '../helpers/random-tree.ts'

const SMALL = 3000

describe('the prover agrees with trying every set of answers', () => {
  test('on 600 random trees, each with a random rule', () => {
    const seen = { proved: 0, refuted: 0, never: 0 }
    fc.assert(
      fc.property(
        randomTree
          .filter(tree => sizeOf(tree) <= SMALL)
          .chain(tree => fc.tuple(fc.constant(tree), randomRule(tree))),
        ([sketched, rule]) => {
          const tree = { ...sketched, rules: [rule] }
          const proved = proveRule(new TreeDiagrams(tree), rule, {})
          const truth = ruleHolds(tree, rule)
          const never = proved.findings[0]?.code === 'rule-never-applies'
          seen[never ? 'never' : proved.standing === 'proved' ? 'proved' : 'refuted']++
          expect(never ? null : proved.standing === 'proved').toBe(truth)
        }
      ),
      { numRuns: 600 }
    )
    // A comparison that never meets one of the three standings would show nothing.
    expect(Math.min(seen.proved, seen.refuted, seen.never)).toBeGreaterThan(5)
  })

  test('on 400 random trees, for what not knowing may do to the use', () => {
    const seen = { proved: 0, refuted: 0 }
    fc.assert(
      fc.property(
        randomTree.filter(tree => sizeOf(tree) <= SMALL),
        tree => {
          const [law] = proveUnsure(new TreeDiagrams(tree), {})
          const truth = unsureNeverReassures(tree)
          seen[law?.standing === 'proved' ? 'proved' : 'refuted']++
          expect(law?.standing === 'proved').toBe(truth)
        }
      ),
      { numRuns: 400 }
    )
    expect(Math.min(seen.proved, seen.refuted)).toBeGreaterThan(5)
  })
})

function unsureNeverReassures(tree: Tree): boolean {
  const use = (answers: Parameters<typeof walk>[1]) => useLevel(walk(tree, answers).outcome.use)
  for (const answers of everySet(tree)) {
    if (use(answers) > 0) continue
    for (const variable of spaceOf(tree)) {
      const told = answers[variable.observation]
      const now = variable.sign ? (told as Record<string, string>)[variable.sign] : told
      const borderline =
        typeof now === 'object' &&
        Object.values(tree.questions).some(
          q =>
            q.kind === 'measure' &&
            q.asks === variable.observation &&
            !q.ranges.some(({ range }) => holdsAll(range, now as never))
        )
      if (now !== 'unsure' && !borderline) continue
      if (variable.values.some(value => use(withValue(answers, variable, value)) > 0)) return false
    }
  }
  return true
}
