import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { faultsOf, KINDS } from '../../src/prove/faults/faults.ts'
import { judge } from '../../src/prove/faults/judge.ts'
import { scoreOf } from '../../src/prove/faults/score.ts'
import { PROPERTIES } from '../../src/prove/prove.ts'
import { TreeDiagrams } from '../../src/tree/tree-diagrams.ts'
import { sizeOf } from '../helpers/brute-force.ts'
import { randomTree } from '../helpers/random-tree.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { describedTree } from './described-tree.ts'

// Every slip of every tree takes minutes: `jarside check --faults`. Here a share of each, in their order.
const EVERY = 29

describe('a slip in a shipped tree that makes it less cautious is found', async () => {
  const { trees, sources } = await loadShipped()

  test.each(trees)('of $id, but for those known to be unseen', tree => {
    const { faults, survivors } = scoreOf(tree, sources, EVERY)
    expect(faults).toBeGreaterThan(0)
    expect(survivors).toEqual([])
  })
})

describe('a slip in a random tree that its rules describe is found', () => {
  test('on 60 random trees, most by what two answers make sure of', () => {
    const seen = { found: 0, survived: 0 }
    const kinds = new Set<string>()
    const few = randomTree.filter(tree => sizeOf(tree) <= 300 && sizeOf(tree) >= 20)
    fc.assert(
      fc.property(few, fc.nat(6), (sketched, from) => {
        const tree = describedTree(sketched)
        const rules = PROPERTIES.find(({ kind }) => kind === 'rule')
        expect(rules?.prove(new TreeDiagrams(tree), {}, {}).findings).toEqual([])
        for (const fault of faultsOf(tree).filter((_, index) => index % 7 === from)) {
          const changed = judge(tree, fault, {})
          if (changed === null) continue
          kinds.add(fault.kind)
          const proved = rules?.prove(new TreeDiagrams(fault.tree), {}, {})
          seen[proved?.standing === 'refuted' ? 'found' : 'survived']++
        }
      }),
      { numRuns: 60 }
    )
    expect([...kinds].sort()).toEqual([...KINDS].sort())
    // What is left takes three answers together; the rules here name two at most.
    expect(seen.found).toBeGreaterThan(50)
    expect(seen.found / (seen.found + seen.survived)).toBeGreaterThan(0.75)
  })
})
