import { describe, expect, test } from 'vitest'
import { generatedTree, type Size } from '../../bench/generated-tree.ts'
import { searchOf } from '../../bench/search/large.ts'
import { TreeDiagrams } from '../../src/diagrams/tree-diagrams.ts'
import { breachOf } from '../../src/prove/claim.ts'
import { boxesOf, everything } from '../../src/prove/open.ts'
import { shortestTo, unusualIn } from '../../src/prove/witness.ts'

const SIZES: readonly Size[] = [
  { questions: 60, observations: 12 },
  { questions: 100, observations: 20 },
  { questions: 1000, observations: 20 },
  { questions: 1000, observations: 100 },
  { questions: 1000, observations: 200 }
]

describe('a generated tree is what the figures say it is', () => {
  test.each(SIZES)('$questions questions over $observations are all asked and reached', size => {
    const tree = generatedTree(size)
    const made = new TreeDiagrams(tree)
    const questions = Object.values(tree.questions)
    const reached = searchOf(made).reached(everything(made))
    expect(questions).toHaveLength(size.questions)
    expect(new Set(questions.map(({ asks }) => asks)).size).toBe(size.observations)
    expect(questions.map(({ id }) => id).filter(id => !reached?.has(id))).toEqual([])
    expect(tree.rules).toHaveLength(30)
  })

  test('the same seed makes the same tree, another one another', () => {
    const [size] = SIZES as [Size]
    expect(generatedTree(size)).toEqual(generatedTree(size))
    expect(generatedTree({ ...size, seed: 2 })).not.toEqual(generatedTree(size))
  })

  test('the search and the diagrams agree on its rules', () => {
    const standings = [1, 2, 3].flatMap(seed => {
      const tree = generatedTree({ questions: 60, observations: 12, seed })
      const made = new TreeDiagrams(tree)
      return tree.rules.map(rule => {
        const breach = breachOf(tree, rule.claim)
        const [box] = boxesOf(made, rule)
        if (box === undefined) return 'never'
        const found = searchOf(made).breaking(breach, box)
        const choice = shortestTo(made, made.of(breach.lens), box, breach.breaks)
        expect(found.kind).toBe(choice === undefined ? 'none' : 'breach')
        if (found.kind === 'breach' && choice !== undefined) {
          expect(unusualIn(made, found.choice, box)).toBe(unusualIn(made, choice, box))
        }
        return found.kind
      })
    })
    expect(standings.filter(kind => kind === 'none').length).toBeGreaterThan(20)
    expect(standings.filter(kind => kind === 'breach').length).toBeGreaterThan(20)
  })
})
