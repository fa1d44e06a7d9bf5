import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Comparison, compare } from '../../src/compare/compare.ts'
import { withValue } from '../../src/diagrams/space.ts'
import { walk } from '../../src/evaluate/walk.ts'
import { jointSpace } from '../../src/prove/joint-space.ts'
import type { Answers } from '../../src/tree/answers.ts'
import { level, useLevel } from '../../src/tree/caution.ts'
import { TRACKS } from '../../src/tree/observation.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { sizeOf } from '../helpers/brute-force.ts'
import { randomTree } from '../helpers/random-tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'

const [tree] = await shippedTrees()
if (tree === undefined) throw new Error('no tree is shipped')

/** A copy of a tree in which something was edited. */
function edited(of: Tree, edit: (copy: Mutable) => void): Tree {
  const copy = structuredClone(of)
  edit(copy as unknown as Mutable)
  return { ...copy, fingerprint: 'edited' }
}
// biome-ignore lint/suspicious/noExplicitAny: an edit reaches anywhere into a copy.
type Mutable = { questions: Record<string, any>; verdicts: any[] }

/** Every set of answers that both editions know, one by one. */
function eachSet(before: Tree, after: Tree, visit: (answers: Answers) => void): void {
  const { variables } = jointSpace(before, after)
  const settlers = Object.values(after.observations).filter(
    observation => observation.kind === 'choice' && observation.settles !== undefined
  )
  const unsure = Object.fromEntries(settlers.map(({ id }) => [id, 'unsure']))
  const go = (at: number, answers: Answers): void => {
    const variable = variables[at]
    if (variable === undefined) {
      visit({ ...answers, ...unsure })
      return
    }
    for (const value of variable.values) go(at + 1, withValue(answers, variable, value))
  }
  go(0, {})
}

/** The kind of a change as the design says it, from two outcomes alone. */
function changeOf(of: Tree, answers: Answers, before: Tree, after: Tree) {
  const [was, is] = [walk(before, answers).outcome, walk(after, answers).outcome]
  const differences = [
    ...TRACKS.map(track => level(of, track, is[track]) - level(of, track, was[track])),
    useLevel(is.use) - useLevel(was.use)
  ]
  if (differences.some(difference => difference < 0)) return 'less-cautious'
  if (differences.some(difference => difference > 0)) return 'more-cautious'
  const notes = (all: readonly string[]) => [...all].sort().join()
  return notes(was.notes) === notes(is.notes) ? 'same' : 'sideways'
}

const holds = (pattern: Comparison['patterns'][number], answers: Answers) =>
  pattern.when.every(({ observation, sign, values }) => {
    const told = answers[observation]
    const value = sign === null ? told : (told as Readonly<Record<string, unknown>>)[sign]
    return values.some(({ answer }) => JSON.stringify(answer) === JSON.stringify(value))
  })

describe('two editions of a random tree', () => {
  test('are compared as trying every set of answers compares them', () => {
    const seen = { 'less-cautious': 0, 'more-cautious': 0, sideways: 0, same: 0 }
    fc.assert(
      fc.property(
        randomTree.filter(small => sizeOf(small) <= 400),
        fc.nat({ max: 1000 }),
        (before, number) => {
          const after = edited(before, copy => strayed(copy, number))
          const found = compare(before, after)
          const counted = { 'less-cautious': 0n, 'more-cautious': 0n, sideways: 0n, same: 0n }
          eachSet(before, after, answers => {
            const kind = changeOf(after, answers, before, after)
            counted[kind] += 1n
            seen[kind]++
            // A set lies in a pattern of its own kind, and in none of another.
            const held = found.patterns.filter(one => holds(one, answers))
            const kinds = [...new Set(held.map(({ change }) => change))]
            if (found.truncated.length === 0) expect(kinds).toEqual(kind === 'same' ? [] : [kind])
          })
          const { same, ...changed } = counted
          expect(found.changed).toEqual(changed)
          expect(found.sets).toBe(Object.values(counted).reduce((sum, some) => sum + some, 0n))
        }
      ),
      { numRuns: 150 }
    )
    // A comparison that never met one of the four would show nothing.
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(0)
  })
})

/** Edits one branch of one question: what it raises, what it leaves to be used, what it notes. */
function strayed(copy: Mutable, number: number): void {
  const questions = Object.values(copy.questions)
  const question = questions[number % questions.length]
  const branches: Branch[] = question.answers
    ? Object.values(question.answers)
    : (question.ranges ??
      Object.values(question.signs as Record<string, Record<string, Branch>>).flatMap(sign =>
        Object.values(sign)
      ))
  const branch = branches[number % branches.length]
  if (branch === undefined) return
  branch.use = ['as-directed', 'not-yet', 'never'][number % 3] ?? 'never'
  if (number % 2 === 0) branch.raise = []
  if (number % 5 === 0) branch.notes = []
}

interface Branch {
  use: string
  raise: string[]
  notes: string[]
}

describe('an edition compared with itself', () => {
  test('has no change at all', () => {
    const { changed, patterns } = compare(tree, tree)
    expect(changed).toEqual({ 'less-cautious': 0n, 'more-cautious': 0n, sideways: 0n })
    expect(patterns).toEqual([])
  })
})

describe('a fault in the jar tree', () => {
  test('that lets dry circles pass is one pattern, named by the texture alone but for mold removed', () => {
    const gentler = edited(tree, copy => {
      for (const question of Object.values(copy.questions)) {
        if (question.asks === 'surface-texture') question.answers['dry-raised-circles'].raise = []
      }
    })
    const { changed, patterns } = compare(tree, gentler)
    expect(changed['less-cautious'] > 0n && changed['more-cautious'] === 0n).toBe(true)
    expect(
      patterns.map(({ change, when }) => [change, when.map(one => one.sign ?? one.observation)])
    ).toEqual([['less-cautious', ['mold-removed', 'surface-texture']]])
    expect(patterns[0]?.turns).toContainEqual({
      side: 'batch',
      from: 'likely-mold',
      to: 'discard-and-sanitize'
    })
  })

  test('turned round is more cautious and not less', () => {
    const gentler = edited(tree, copy => {
      for (const question of Object.values(copy.questions)) {
        if (question.asks === 'surface-texture') question.answers['dry-raised-circles'].raise = []
      }
    })
    const { changed } = compare(gentler, tree)
    expect(changed['less-cautious']).toBe(0n)
    expect(changed['more-cautious'] > 0n).toBe(true)
  })

  test('is shown by an example that walks as it says', () => {
    const freer = edited(tree, copy => {
      for (const question of Object.values(copy.questions)) {
        if (question.asks !== 'jar-ph') continue
        for (const range of question.ranges) if (range.range.over === 4.2) range.raise = []
      }
    })
    for (const { change, example } of compare(tree, freer).patterns) {
      expect(walk(tree, example.answers).outcome).toEqual(example.before)
      expect(walk(freer, example.answers).outcome).toEqual(example.after)
      expect(changeOf(tree, example.answers, tree, freer)).toBe(change)
    }
  })
})

describe('what only one edition knows', () => {
  test('is named and not counted', () => {
    const without = edited(tree, copy => {
      const texture = (
        copy as unknown as { observations: Record<string, { answers: { id: string }[] }> }
      ).observations['surface-texture']
      if (texture) texture.answers = texture.answers.filter(({ id }) => id !== 'falling-apart')
    })
    const { onlyBefore, onlyAfter, sets } = compare(tree, without)
    expect(onlyBefore).toEqual([{ observation: 'surface-texture', answer: 'falling-apart' }])
    expect(onlyAfter).toEqual([])
    expect(sets < compare(tree, tree).sets).toBe(true)
  })

  test('as an emergency is said by itself', () => {
    const calmer = edited(tree, copy => {
      for (const question of Object.values(copy.questions)) {
        if (question.signs?.['severe-symptoms']) question.signs['severe-symptoms'].yes.raise = []
      }
    })
    expect(compare(tree, calmer).emergencies.gone).toEqual([
      { observation: 'people-signs', answer: 'severe-symptoms' }
    ])
  })
})
