import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { couldBe, couldBeTogether } from '../../src/evaluate/could-be.ts'
import { nobodyTold, outcomeToKeep } from '../../src/evaluate/keep.ts'
import { walk } from '../../src/evaluate/walk.ts'
import { NOTHING_YET, type Outcome, verdictsOf } from '../../src/tree/caution.ts'
import { EMERGENCY } from '../../src/tree/emergency.ts'
import { type Tree, USES } from '../../src/tree/tree.ts'
import { everySet, sizeOf } from '../helpers/brute-force.ts'
import { completeAnswers, randomTree } from '../helpers/random-tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'

const shipped = await shippedTrees()

/** Small trees that know the notes which they say. */
const smallTree = randomTree
  .filter(tree => sizeOf(tree) <= 3000)
  .map((tree): Tree => {
    const notes = { 'note-a': { because: [] }, 'note-b': { because: [] } }
    return { ...tree, advice: { ...tree.advice, notes: notes as never } }
  })

/** What is compared of an outcome of the jar alone. */
const named = ({ container, batch, use, notes }: Outcome) =>
  JSON.stringify([container, batch, use, [...notes].sort()])

/** Every outcome that the answers of some set give when nobody has anything to tell. */
function given(tree: Tree): ReadonlySet<string> {
  const nobody = nobodyTold(tree)
  const outcomes = [...everySet(tree)].map(answers => walk(tree, { ...answers, ...nobody }).outcome)
  return new Set(outcomes.map(named))
}

/** Every outcome that can be written down, given or not. */
function* everyOutcome(tree: Tree): Generator<Outcome> {
  const notes = Object.keys(tree.advice.notes)
  const subsets: string[][] = [[]]
  for (const note of notes) subsets.push(...subsets.map(some => [...some, note]))
  for (const container of [null, ...verdictsOf(tree, 'container')])
    for (const batch of [null, ...verdictsOf(tree, 'batch')])
      for (const use of USES)
        for (const some of subsets) yield { ...NOTHING_YET, container, batch, use, notes: some }
}

describe('an outcome of one jar', () => {
  test('could be exactly when some walk gives it, every set tried one by one', () => {
    const seen = { given: 0, never: 0 }
    fc.assert(
      fc.property(smallTree, tree => {
        const outcomes = given(tree)
        for (const outcome of everyOutcome(tree)) {
          const is = outcomes.has(named(outcome))
          seen[is ? 'given' : 'never'] += 1
          expect(couldBe(tree, outcome)).toBe(is)
        }
      }),
      { numRuns: 80 }
    )
    expect(Math.min(seen.given, seen.never)).toBeGreaterThan(40)
  })

  test.each(shipped.map(tree => [tree.id, tree] as const))(
    'of %s could be whatever a caller told',
    (_, tree) => {
      fc.assert(
        fc.property(completeAnswers(tree), answers => {
          const kept = outcomeToKeep(tree, answers)
          fc.pre(kept.batch !== null)
          expect(couldBe(tree, kept)).toBe(true)
        }),
        { numRuns: 80 }
      )
    }
  )

  test('with a note that no tree knows could not be', () => {
    const [tree] = shipped as [Tree]
    const [answers] = fc.sample(completeAnswers(tree), { numRuns: 1, seed: 7 })
    const kept = outcomeToKeep(tree, answers ?? {})
    expect(couldBe(tree, kept)).toBe(true)
    expect(couldBe(tree, { ...kept, notes: [...kept.notes, '__proto__'] })).toBe(false)
  })
})

describe('verdicts', () => {
  test('could be given together exactly when some walk gives them all', () => {
    const seen = { given: 0, never: 0 }
    fc.assert(
      fc.property(smallTree, tree => {
        const all = [...everySet(tree)].map(answers => walk(tree, answers).outcome)
        for (const container of verdictsOf(tree, 'container')) {
          for (const batch of verdictsOf(tree, 'batch')) {
            const is = all.some(one => one.container === container && one.batch === batch)
            seen[is ? 'given' : 'never'] += 1
            expect(couldBeTogether(tree, [container, batch])).toBe(is)
          }
        }
      }),
      { numRuns: 240 }
    )
    expect(Math.min(seen.given, seen.never)).toBeGreaterThan(20)
  })

  test.each(shipped.map(tree => [tree.id, tree] as const))(
    'of %s could each be given alone that some caller met, and the emergency',
    (_, tree) => {
      fc.assert(
        fc.property(completeAnswers(tree), answers => {
          const { person, container, batch } = walk(tree, answers).outcome
          for (const id of [person, container, batch]) {
            if (id !== null) expect(couldBeTogether(tree, [id])).toBe(true)
          }
        }),
        { numRuns: 80 }
      )
      expect(couldBeTogether(tree, [EMERGENCY])).toBe(true)
    }
  )

  test('that a tree knows and never gives could not', () => {
    const outside = shipped.find(({ id }) => id === 'outside-this-tool') as Tree
    const never = outside.verdicts.map(({ id }) => id).filter(id => !couldBeTogether(outside, [id]))
    expect(never).toContain('yeast-strands')
    expect(never).not.toContain('possible-toxin')
  })
})
