import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { Search } from '../../bench/search/search.ts'
import type { Open } from '../../src/diagrams/reach.ts'
import { TreeDiagrams } from '../../src/diagrams/tree-diagrams.ts'
import { walk } from '../../src/evaluate/walk.ts'
import { type Breach, breachOf } from '../../src/prove/claim.ts'
import { boxesOf, everything, isUsual } from '../../src/prove/open.ts'
import { levelIn } from '../../src/prove/replay.ts'
import { completed, shortestTo, unusualIn } from '../../src/prove/witness.ts'
import type { Answers } from '../../src/tree/answers.ts'
import type { Rule, Tree } from '../../src/tree/tree.ts'
import { everySet, sizeOf, speaks, valueIn } from '../helpers/brute-force.ts'
import { randomRule, randomTree } from '../helpers/random-tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'

const SMALL = 3000

/** The fewest unusual answers of any complete set in a rule's scope that breaks it; null where none does. */
function fewestByBruteForce(made: TreeDiagrams, rule: Rule, { lens, breaks }: Breach) {
  let fewest: number | null = null
  for (const answers of everySet(made.tree)) {
    if (!speaks(made.tree, rule, answers)) continue
    if (!breaks(levelIn(made.tree, lens, walk(made.tree, answers).outcome))) continue
    const count = unusualCount(made, answers)
    fewest = Math.min(fewest ?? count, count)
  }
  return fewest
}

function unusualCount(made: TreeDiagrams, answers: Answers): number {
  return made.variables.filter(
    variable => !isUsual(made.tree, variable, valueIn(made.tree, variable, answers))
  ).length
}

/** The same by searching, replayed through `walk()`; undefined where the search gives up. */
function fewestBySearch(
  search: Search,
  made: TreeDiagrams,
  breach: Breach,
  boxes: readonly Open[]
): number | null | undefined {
  const searched = boxes.map(box => ({ box, found: search.breaking(breach, box) }))
  if (searched.some(({ found }) => found.kind === 'too-much')) return undefined
  const counts = searched.flatMap(({ box, found }) => {
    if (found.kind !== 'breach') return []
    const { outcome } = walk(made.tree, completed(made, found.choice, box))
    expect(breach.breaks(levelIn(made.tree, breach.lens, outcome))).toBe(true)
    return [unusualIn(made, found.choice, box)]
  })
  return counts.length === 0 ? null : Math.min(...counts)
}

function questionsMet(tree: Tree): ReadonlySet<string> {
  const met = new Set<string>()
  for (const answers of everySet(tree)) {
    for (const { question } of walk(tree, answers).trail) met.add(question)
  }
  return met
}

describe('a search question by question agrees with every set of answers', () => {
  test('on the standing of a rule, and on the fewest unusual answers that break it', () => {
    const seen = { once: { kept: 0, broken: 0 }, again: { kept: 0, broken: 0 } }
    fc.assert(
      fc.property(
        randomTree
          .filter(tree => sizeOf(tree) <= SMALL)
          .chain(tree => fc.tuple(fc.constant(tree), randomRule(tree))),
        ([sketched, rule]) => {
          const made = new TreeDiagrams({ ...sketched, rules: [rule] })
          const breach = breachOf(made.tree, rule.claim)
          const boxes = boxesOf(made, rule)
          const search = new Search(made)
          const found = fewestBySearch(search, made, breach, boxes)
          seen[search.readsAgain ? 'again' : 'once'][found === null ? 'kept' : 'broken']++
          expect(found).toBe(fewestByBruteForce(made, rule, breach))
        }
      ),
      { numRuns: 600 }
    )
    // Trees that read nothing twice and trees that do, rules that hold and rules that do not.
    const counts = [...Object.values(seen.once), ...Object.values(seen.again)]
    expect(Math.min(...counts)).toBeGreaterThan(20)
  })

  test('on which questions some answers come to', () => {
    fc.assert(
      fc.property(
        randomTree.filter(tree => sizeOf(tree) <= SMALL),
        tree => {
          const made = new TreeDiagrams(tree)
          const reached = new Search(made).reached(everything(made))
          expect([...(reached ?? [])].sort()).toEqual([...questionsMet(tree)].sort())
        }
      ),
      { numRuns: 200 }
    )
  })
})

describe('a search agrees with the diagrams of the shipped trees', () => {
  test('on every rule, kept or turned about', async () => {
    let broken = 0
    for (const tree of await shippedTrees()) {
      let compared = 0
      let givenUp = 0
      const made = new TreeDiagrams(tree)
      const search = new Search(made)
      // Every sixteenth rule, from another one on in each tree: the trees share many.
      for (const rule of tree.rules.filter((_, at) => at % 16 === tree.id.length % 16)) {
        const { lens, breaks } = breachOf(tree, rule.claim)
        for (const turned of [false, true]) {
          const breach: Breach = { lens, breaks: level => breaks(level) !== turned }
          const boxes = boxesOf(made, rule)
          const counts = boxes.flatMap(box => {
            const choice = shortestTo(made, made.of(lens), box, breach.breaks)
            return choice === undefined ? [] : [unusualIn(made, choice, box)]
          })
          const fewest = counts.length === 0 ? null : Math.min(...counts)
          const bySearch = fewestBySearch(search, made, breach, boxes)
          // Some rules have too many states for a search: the diagrams alone decide those.
          if (bySearch === undefined) {
            givenUp++
            continue
          }
          compared++
          if (fewest !== null) broken++
          expect(bySearch, rule.id).toBe(fewest)
        }
      }
      expect(compared, tree.id).toBeGreaterThan(givenUp)
    }
    expect(broken).toBeGreaterThan(60)
  })
})

describe('a search says where it gives up', () => {
  test('beyond so many states', async () => {
    const [tree] = await shippedTrees()
    const made = new TreeDiagrams(tree as Tree)
    const breach: Breach = { lens: 'batch', breaks: level => level > 30 }
    expect(new Search(made).breaking(breach, everything(made), 10)).toEqual({ kind: 'too-much' })
  })
})
