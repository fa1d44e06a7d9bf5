import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { TreeDiagrams } from '../../src/diagrams/tree-diagrams.ts'
import { answersToKeep, outcomeToKeep } from '../../src/evaluate/keep.ts'
import { narrows, noGentler, possible } from '../../src/evaluate/possible.ts'
import { walk } from '../../src/evaluate/walk.ts'
import { levelIn } from '../../src/prove/replay.ts'
import type { Answer, Answers } from '../../src/tree/answers.ts'
import { isVolunteered } from '../../src/tree/decide.ts'
import { emergenciesTold } from '../../src/tree/emergency.ts'
import { settlersOf } from '../../src/tree/linked.ts'
import { must } from '../../src/tree/must.ts'
import type { MeasureObservation } from '../../src/tree/observation.ts'
import { measured } from '../../src/tree/reading.ts'
import { tell, withdraw } from '../../src/tree/tell.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { everySet, sizeOf, valueIn } from '../helpers/brute-force.ts'
import { answerArb, completeAnswers, randomTree, someAnswers } from '../helpers/random-tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'
import { usualExcept } from '../helpers/usual.ts'

const shipped = await shippedTrees()
const anyTree = fc.oneof(randomTree, fc.constantFrom(...shipped))
const withAnswers = (pick: (tree: Tree) => fc.Arbitrary<Answers>) =>
  anyTree.chain(tree => fc.tuple(fc.constant(tree), pick(tree)))

describe('law 1: every complete set of answers has exactly one outcome', () => {
  test('unsure included anywhere', () => {
    fc.assert(
      fc.property(withAnswers(completeAnswers), ([tree, answers]) => {
        const { finished, asks, outcome } = walk(tree, answers)
        expect(finished).toBe(true)
        expect(asks).toBeNull()
        expect(outcome.batch === null).toBe(emergenciesTold(tree, answers).length > 0)
        if (outcome.batch === null) expect(outcome.person).toBe('emergency')
      }),
      { numRuns: 3000 }
    )
  })
})

describe('law 2: the outcome depends on the set of answers, never on their order', () => {
  test('facts told in two orders, contradictions among them', () => {
    const facts = anyTree.chain(tree => {
      const fact = fc
        .constantFrom(...Object.values(tree.observations).filter(o => o.kind !== 'measure' || true))
        .chain(o => answerArb(o).map(answer => [o.id, answer] as const))
      return fc.tuple(
        fc.constant(tree),
        fc.uniqueArray(fact, {
          maxLength: 12,
          selector: ([id, a]) =>
            (typeof a === 'object' && 'reading' in a) || a === 'unsure'
              ? id
              : `${id} ${JSON.stringify(a)}`
        }),
        fc.infiniteStream(fc.nat())
      )
    })
    fc.assert(
      fc.property(facts, ([tree, told, numbers]) => {
        const measured = new Set<string>()
        const once = told.filter(([id]) => {
          if (tree.observations[id]?.kind !== 'measure') return true
          const first = !measured.has(id)
          measured.add(id)
          return first
        })
        const shuffled = once
          .map(fact => [numbers.next().value as number, fact] as const)
          .sort(([a], [b]) => a - b)
          .map(([, fact]) => fact)
        const ends = [once, shuffled].map(order => {
          const answers = order.reduce<Answers>((so, [id, answer]) => {
            const observation = tree.observations[id]
            return observation ? tell(so, observation, answer) : so
          }, {})
          return walk(tree, answers)
        })
        expect(ends[0]?.outcome).toEqual(ends[1]?.outcome)
        expect(ends[0]?.asks).toEqual(ends[1]?.asks)
      }),
      { numRuns: 2000 }
    )
  })
})

describe('law 5: changing or withdrawing an answer leaves no trace', () => {
  test('the walk is that of a fresh start with the remaining answers', () => {
    const edits = withAnswers(someAnswers).chain(([tree, answers]) =>
      fc.tuple(
        fc.constant(tree),
        fc.constant(answers),
        completeAnswers(tree),
        fc.subarray(Object.keys(tree.observations))
      )
    )
    fc.assert(
      fc.property(edits, ([tree, answers, others, taken]) => {
        const changed = { ...answers, ...only(others, taken) }
        const back = taken.reduce<Answers>((so, id) => {
          const without = withdraw(so, id)
          return Object.hasOwn(answers, id) ? { ...without, [id]: answers[id] as Answer } : without
        }, changed)
        expect(walk(tree, back)).toEqual(walk(tree, answers))
      }),
      { numRuns: 1000 }
    )
  })
})

describe('law 6: what can still happen only shrinks as answers come in', () => {
  test('what the tree would ask narrows every side of the outcome', () => {
    const growing = anyTree.chain(tree =>
      fc.tuple(
        fc.constant(tree),
        completeAnswers(tree),
        fc.shuffledSubarray(Object.keys(tree.observations), {
          minLength: Object.keys(tree.observations).length
        })
      )
    )
    fc.assert(
      fc.property(growing, ([tree, all, order]) => {
        let answers: Answers = {}
        let before = possible(tree, answers)
        let done = false
        for (const id of order) {
          answers = { ...answers, [id]: all[id] as Answer }
          const after = possible(tree, answers)
          const emergency = after.person.includes('emergency')
          // Once a walk is finished, a fact that nothing asked for is a correction: more cautious, or nothing.
          if (!emergency && !(done && isExtra(tree, id))) expect(narrows(before, after)).toBe(true)
          if (!emergency && !done) expect(noGentler(tree, before.atLeast, after.atLeast)).toBe(true)
          before = after
          done = walk(tree, answers).finished
        }
        expect(before.settled).toBe(true)
      }),
      { numRuns: 600 }
    )
  })

  test('exactly the outcomes of the complete sets that hold the answers', () => {
    const small = randomTree.filter(
      tree =>
        sizeOf(tree) <= 1500 &&
        !Object.values(tree.observations).some(o => settlersOf(tree, o.id).length > 0)
    )
    const told = small.chain(tree =>
      fc.tuple(
        fc.constant(tree),
        completeAnswers(tree),
        fc.subarray(Object.keys(tree.observations))
      )
    )
    fc.assert(
      fc.property(told, ([tree, all, kept]) => {
        const answers = Object.fromEntries(kept.map(id => [id, all[id] as Answer]))
        fc.pre(!walk(tree, answers).finished)
        const seen = { batch: new Set<string | null>(), use: new Set<string>() }
        for (const set of everySet(tree)) {
          const { outcome } = walk(tree, { ...set, ...answers })
          seen.batch.add(outcome.batch)
          seen.use.add(outcome.use)
        }
        const can = possible(tree, answers)
        expect(new Set(can.batch)).toEqual(seen.batch)
        expect(new Set(can.use)).toEqual(seen.use)
      }),
      { numRuns: 150 }
    )
  })
})

describe('law 7: the diagrams and the walk have one meaning', () => {
  test('on every side of the outcome of every small tree', () => {
    fc.assert(
      fc.property(
        randomTree.filter(tree => sizeOf(tree) <= 1500),
        tree => {
          const made = new TreeDiagrams(tree)
          for (const answers of everySet(tree)) {
            const { outcome } = walk(tree, answers)
            for (const lens of [
              'person',
              'container',
              'batch',
              'use',
              { note: 'note-a' }
            ] as const) {
              expect(levelAt(made, made.of(lens), answers)).toBe(levelIn(tree, lens, outcome))
            }
          }
        }
      ),
      { numRuns: 60 }
    )
  })
})

describe('law 8: a doubtful measurement is not a pass', () => {
  const jar = shipped.find(({ id }) => id === 'kombucha-jar') as Tree
  const ph = jar.observations['jar-ph'] as MeasureObservation
  const passes = (told: Answers) => walk(jar, usualExcept(jar, told)).outcome.use === 'as-directed'

  test('a wider instrument never passes what a narrower one does not', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1400 }),
        fc.integer({ min: 0, max: 40 }),
        (hundredths, day) => {
          const at = (instrument?: string) =>
            passes({
              'jar-ph': measured(ph, hundredths / 100, instrument),
              day: { low: day, reading: day, high: day }
            })
          const byWidth = ['meter', 'narrow-strip', 'wide-strip', undefined].map(at)
          expect(byWidth).toEqual([...byWidth].sort((a, b) => Number(b) - Number(a)))
        }
      ),
      { numRuns: 2000 }
    )
  })

  test('with no instrument named the widest counts', () => {
    expect(measured(ph, 3.7)).toMatchObject({ low: 3.2, high: 4.2 })
  })

  test('a limit met to the last digit is met, whatever floating point adds', () => {
    expect(measured(ph, 4.15, 'meter').high).toBe(4.2)
    expect(measured(ph, 3.9, 'narrow-strip').high).toBe(4.2)
  })

  test('a reading outside what can be true is refused with the span', () => {
    expect(() => measured(ph, 15, 'meter')).toThrow('jar-ph lies between 0 and 14')
    expect(() => measured(ph, Number.NaN)).toThrow(RangeError)
    expect(() => measured(ph, 3, 'tongue')).toThrow('not measured with tongue')
  })
})

describe('law 10: nothing about a person is kept', () => {
  test('what is kept is the same whatever is told of people', () => {
    const pairs = anyTree.chain(tree =>
      fc.tuple(fc.constant(tree), completeAnswers(tree), completeAnswers(tree))
    )
    fc.assert(
      fc.property(pairs, ([tree, answers, others]) => {
        const people = Object.values(tree.observations).filter(({ about }) => about === 'person')
        const swapped = {
          ...answers,
          ...only(
            others,
            people.map(({ id }) => id)
          )
        }
        expect(answersToKeep(tree, swapped)).toEqual(answersToKeep(tree, answers))
        expect(outcomeToKeep(tree, swapped)).toEqual(outcomeToKeep(tree, answers))
        for (const { id } of people) expect(answersToKeep(tree, answers)).not.toHaveProperty(id)
        expect(outcomeToKeep(tree, answers).person).toBeNull()
      }),
      { numRuns: 1500 }
    )
  })
})

function only(answers: Answers, ids: readonly string[]): Answers {
  return Object.fromEntries(ids.map(id => [id, answers[id] as Answer]))
}

function isExtra(tree: Tree, id: string): boolean {
  const observation = tree.observations[id]
  if (observation?.kind === 'choice') return observation.settles !== undefined
  return (
    Object.values(tree.questions).some(q => q.asks === id && isVolunteered(q)) ||
    (observation?.kind === 'signs' && observation.signs.some(sign => sign.volunteered))
  )
}

function levelAt(made: TreeDiagrams, diagram: number, answers: Answers): number {
  let at = diagram
  while (!made.diagrams.isConstant(at)) {
    const variable = must(made.variables[made.diagrams.variableOf(at)], 'variable')
    const value = variable.values.indexOf(valueIn(made.tree, variable, answers))
    at = must(made.diagrams.childrenOf(at)[value], 'child')
  }
  return at
}
