import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { TreeDiagrams } from '../../src/diagrams/tree-diagrams.ts'
import { faultsOf, KINDS } from '../../src/prove/faults/faults.ts'
import { judge } from '../../src/prove/faults/judge.ts'
import { scoreOf } from '../../src/prove/faults/score.ts'
import { namesOfFaults } from '../../src/prove/faults/unfound.ts'
import { PROPERTIES } from '../../src/prove/prove.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { sizeOf } from '../helpers/brute-force.ts'
import { randomTree } from '../helpers/random-tree.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { describedTree } from './described-tree.ts'

// Every slip of every tree takes minutes: `jarside check --faults`. Here some of each, in their order.
const SAMPLE = 20
/** Each takes seconds in a tree of so many questions, and a few have to do. */
const MANY = 130
const FEW = 4
/** Of the slips that make a tree less cautious, found by rules, properties and laws alone. */
const AT_LEAST = 0.98

describe('a slip in a shipped tree that makes it less cautious is found', async () => {
  const { trees, sources } = await loadShipped()

  test.each(trees)('of $id, but for those listed with a reason', tree => {
    const sample = Object.keys(tree.questions).length > MANY ? FEW : SAMPLE
    const every = Math.ceil(faultsOf(tree).length / sample)
    const { faults, survivors } = scoreOf(tree, sources, every)
    expect(faults).toBeGreaterThan(0)
    expect(survivors.filter(name => !Object.hasOwn(tree.unfoundFaults, name))).toEqual([])
  })
})

describe('a law that a tree lists as open', async () => {
  const { trees, sources } = await loadShipped()
  // One that names days to wait for.
  const waiting = trees.filter(({ countsDays }) => countsDays !== undefined)
  const smallest = waiting.reduce((a, b) => (faultsOf(b).length < faultsOf(a).length ? b : a))
  const id = 'a-wait-names-its-time'
  const law = PROPERTIES.filter(one => one.id === id)
  const judged = (tree: Tree) =>
    faultsOf(tree)
      .filter((_, index) => index % SAMPLE === 0)
      .flatMap(fault => judge(tree, fault, sources, law) ?? [])

  test('does not find whatever is done to the tree', () => {
    // Without what its steps do nothing says what to look for.
    const broken = { ...smallest, advice: { ...smallest.advice, does: {} } }
    const cases = law
      .flatMap(one => one.prove(new TreeDiagrams(broken), {}, sources).findings)
      .map(({ facts }) => facts.case)
    expect(cases.length).toBeGreaterThan(0)
    const listed = Object.fromEntries(cases.map(name => [`${name}`, 'not mended yet']))
    const open = { ...broken, openCases: { [id]: listed } }
    expect(judged(broken).every(({ foundBy }) => foundBy === id)).toBe(true)
    expect(judged(open).filter(({ foundBy }) => foundBy === null).length).toBeGreaterThan(0)
  })
})

describe('the recorded score of a shipped tree', async () => {
  const { trees: shipped, faultScores } = await loadShipped()
  const trees = shipped.filter(({ id }) => Object.hasOwn(faultScores, id))

  test.each(trees)('of $id is of all its slips, and nearly all are found', ({ id }) => {
    const { faults = 0, found = 0, unfound = [] } = faultScores[id] ?? {}
    expect(faults).toBeGreaterThan(100)
    expect(found + unfound.length).toBe(faults)
    expect(found / faults).toBeGreaterThanOrEqual(AT_LEAST)
  })

  test.each(trees)('of $id names the slips that its rules list, no more and no less', tree => {
    const listed = Object.keys(tree.unfoundFaults).sort()
    const { unfound = [], advice } = faultScores[tree.id] ?? {}
    expect([...unfound, ...(advice?.unfound ?? [])].sort()).toEqual(listed)
  })

  test.each(trees)('of $id: what is listed can be made', tree => {
    const names = namesOfFaults(tree)
    expect(Object.keys(tree.unfoundFaults).filter(name => !names.has(name))).toEqual([])
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
