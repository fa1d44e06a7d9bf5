import { describe, expect, test } from 'vitest'
import { adviceFor } from '../../src/evaluate/advice.ts'
import { walk } from '../../src/evaluate/walk.ts'
import type { Answers } from '../../src/tree/answers.ts'
import { level, type Outcome, verdict } from '../../src/tree/caution.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { unfolded } from '../helpers/unfolded.ts'
import { usualExcept } from '../helpers/usual.ts'
import { PUBLISHERS, type Publisher, type Statement } from './published.ts'
import { STATEMENTS } from './published-statements.ts'

const { trees, sources } = await loadShipped()
const named = STATEMENTS.map(each => [`${each.source}: ${each.states}`, each] as const)

/** Kinds of ground that somebody published, at first or second hand. */
const PUBLISHED = ['publication', 'regulation', 'relayed']

function treeOf({ tree }: Statement): Tree {
  const found = trees.find(({ id }) => id === tree)
  if (found === undefined) throw new Error(`no tree ${tree}`)
  return found
}

/** Told answers that the tree does not know would be passed over in silence. */
function unknownIn(tree: Tree, told: Answers): readonly string[] {
  return Object.entries(told).flatMap(([id, answer]) => {
    const observation = tree.observations[id]
    if (observation === undefined) return [id]
    if (observation.kind === 'measure' || answer === 'unsure') return []
    const known = observation.kind === 'signs' ? observation.signs : observation.answers
    const ids = typeof answer === 'string' ? [answer] : Object.keys(answer)
    return ids.filter(each => !known.some(one => one.id === each))
  })
}

/** With those of the questions put after the outcome that a statement tells of. */
function withAfter(tree: Tree, told: Answers): Tree {
  const after = tree.after.filter(({ asks }) => Object.hasOwn(told, asks))
  const questions = Object.fromEntries(after.map(question => [question.id, question]))
  return { ...tree, questions: { ...questions, ...tree.questions } }
}

/** How the outcome stands to a verdict, on that verdict's own track. */
function levels(tree: Tree, outcome: Outcome, bound: string): readonly [got: number, at: number] {
  const { track } = verdict(tree, bound)
  return [level(tree, track, outcome[track]), level(tree, track, bound)]
}

describe('what is published holds in the trees', () => {
  test.each(named)('%s', (_, statement) => {
    const tree = treeOf(statement)
    const { told, holds } = statement
    const { atLeast, atMost, says = [], leavesOut = [], ...sides } = holds
    expect(unknownIn(tree, told)).toEqual([])
    const answers = usualExcept(withAfter(tree, told), told)

    const { finished, outcome, trail } = walk(tree, answers)

    expect(finished).toBe(true)
    const found = Object.keys(sides).map(side => [side, outcome[side as 'batch']])
    expect(Object.fromEntries(found)).toEqual(sides)
    if (atLeast !== undefined) {
      const [got, at] = levels(tree, outcome, atLeast)
      expect(got).toBeGreaterThanOrEqual(at)
    }
    if (atMost !== undefined) {
      const [got, at] = levels(tree, outcome, atMost)
      expect(got).toBeLessThanOrEqual(at)
    }
    const advice = unfolded(adviceFor(tree, outcome, answers))
    const { doNow, clean, keep, startAgain, notes, change, because } = advice
    const said = [...doNow, ...clean, ...keep, ...startAgain, ...notes, ...change]
    expect(says.filter(id => !said.includes(id))).toEqual([])
    expect(leavesOut.filter(id => said.includes(id))).toEqual([])
    const cited = [...because, ...trail.flatMap(step => step.because)]
    expect(cited).toContain(statement.source)
  })
})

describe('the statements', () => {
  const ids = new Set(trees.map(({ id }) => id))

  test('number at least forty, four or more to a tree', () => {
    expect(STATEMENTS.length).toBeGreaterThanOrEqual(40)
    const few = [...ids].filter(id => STATEMENTS.filter(({ tree }) => tree === id).length < 4)
    expect(few).toEqual([])
    expect(STATEMENTS.filter(({ tree }) => !ids.has(tree))).toEqual([])
  })

  test('are each made once', () => {
    const said = STATEMENTS.map(({ states }) => states)
    expect(said.filter((each, i) => said.indexOf(each) !== i)).toEqual([])
  })

  test('rest on a source that somebody published', () => {
    const unpublished = STATEMENTS.filter(
      ({ source }) => !PUBLISHED.includes(sources[source]?.kind ?? '')
    )
    expect(unpublished.map(({ source }) => source)).toEqual([])
  })

  test('name the publisher that the sources name', () => {
    const misnamed = STATEMENTS.filter(
      ({ source, publisher }) => !PUBLISHERS[publisher].test(sources[source]?.publisher ?? '')
    )
    expect(misnamed.map(({ source }) => source)).toEqual([])
  })

  test('come from the agencies, three extension services and two journals', () => {
    const of = (publisher: Publisher) =>
      new Set(
        STATEMENTS.filter(each => each.publisher === publisher).map(
          ({ source }) => sources[source]?.publisher
        )
      ).size
    for (const agency of ['USDA', 'NCHFP', 'FDA', 'CDC', 'TTB'] as const) {
      expect(of(agency), agency).toBeGreaterThan(0)
    }
    expect(of('land-grant extension')).toBeGreaterThanOrEqual(3)
    expect(of('journal')).toBeGreaterThanOrEqual(2)
  })
})
