import { isDeepStrictEqual } from 'node:util'
import fc from 'fast-check'
import { afterAll, describe, expect, test } from 'vitest'
import { createActor } from 'xstate'
import { getAdjacencyMap } from 'xstate/graph'
import { type Walk, walk } from '../../src/evaluate/walk.ts'
import {
  type AnswerEvent,
  type Context,
  compileMachine,
  walkOf
} from '../../src/machine/compile-machine.ts'
import type { Answer, Answers } from '../../src/tree/answers.ts'
import { bandsOf } from '../../src/tree/bands.ts'
import type { Observation } from '../../src/tree/observation.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { completeAnswers, randomTree, someAnswers } from '../helpers/random-tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'

const shipped = await shippedTrees()
/** The first tree is gone through at length; the others, which the same code compiles, at a sixth of it. */
const setsFor = (tree: Tree) => (tree === shipped[0] ? 900 : 150)

describe.each(shipped)('the machine of $id agrees with the walk', tree => {
  const machine = compileMachine(tree)
  const events = everyEvent(tree)
  const options = {
    events,
    // Without this every history of answers would be a state of its own, without end.
    serializeState: nameOf,
    limit: 100_000
  }

  // Gone through once for both tests, and of the largest trees not kept for longer than that.
  let found: Adjacency | undefined
  const graph = (): Adjacency => {
    found ??= getAdjacencyMap(machine, options as never) as unknown as Adjacency
    return found
  }
  afterAll(() => {
    found = undefined
  })

  test('after every step of the shortest path to every state that xstate/graph finds', () => {
    const paths = shortestPaths(graph())
    for (const told of paths.values()) {
      const actor = createActor(machine).start()
      let answers: Answers = {}
      for (const event of told) {
        answers = merged(answers, event)
        actor.send(event)
        same(tree, actor.getSnapshot(), walk(tree, answers))
      }
    }
    expect([...paths.keys()].sort()).toEqual(Object.keys(graph()).sort())
    // A question that only reads again what was told is passed, and no state to wait in.
    expect(paths.size).toBeGreaterThan(Object.keys(tree.observations).length / 2)
  })

  test('along every transition out of every state that xstate/graph finds', () => {
    let transitions = 0
    for (const { state, transitions: out } of Object.values(graph())) {
      const before = state.context.answers
      for (const { event, state: next } of Object.values(out)) {
        if (event.type !== 'observe') continue
        transitions++
        same(tree, next, walk(tree, merged(before, event)))
      }
    }
    expect(transitions).toBeGreaterThan(10 * Object.keys(tree.questions).length)
  })

  test(`on ${setsFor(tree)} random sets of answers, whole and in part`, () => {
    const actor = createActor(machine).start()
    let before: readonly string[] = []
    let anew = false
    fc.assert(
      fc.property(fc.oneof(completeAnswers(tree), someAnswers(tree)), answers => {
        // What the last one told goes at once, or answer by answer.
        anew = !anew
        if (anew) actor.send({ type: 'retell', answers: {} })
        else for (const observation of before) actor.send({ type: 'withdraw', observation })
        for (const [observation, answer] of Object.entries(answers)) {
          actor.send({ type: 'observe', observation, answer })
        }
        before = Object.keys(answers)
        same(tree, actor.getSnapshot(), walk(tree, answers))
      }),
      { numRuns: setsFor(tree) }
    )
  })
})

describe('the machine of any tree agrees with the walk', () => {
  test('after every telling and taking back, on 300 random trees', () => {
    fc.assert(
      fc.property(
        randomTree.chain(tree =>
          fc.tuple(
            fc.constant(tree),
            completeAnswers(tree),
            fc.array(fc.tuple(fc.constantFrom(...Object.keys(tree.observations)), fc.boolean()), {
              maxLength: 15
            })
          )
        ),
        ([tree, all, acts]) => {
          const actor = createActor(compileMachine(tree)).start()
          let answers: Answers = {}
          for (const [observation, back] of acts) {
            const answer = all[observation] as Answer
            const told: AnswerEvent = back
              ? { type: 'withdraw', observation }
              : { type: 'observe', observation, answer }
            actor.send(told)
            answers = back
              ? Object.fromEntries(Object.entries(answers).filter(([id]) => id !== observation))
              : merged(answers, told as never)
            same(tree, actor.getSnapshot(), walk(tree, answers))
          }
        }
      ),
      { numRuns: 300 }
    )
  })
})

type Told = Extract<AnswerEvent, { type: 'observe' }>

type Adjacency = Record<
  string,
  {
    state: Snapshot
    transitions: Record<string, { event: Told | { type: 'xstate.init' }; state: Snapshot }>
  }
>

const nameOf = ({ value }: { readonly value: unknown }) => JSON.stringify(value)

/** By state, the fewest tellings that lead there from the first one. */
function shortestPaths(graph: Adjacency): ReadonlyMap<string, readonly Told[]> {
  const [first = ''] = Object.keys(graph)
  const paths = new Map<string, readonly Told[]>([[first, []]])
  // Those that are added are gone on from in their turn: the nearest come first.
  for (const [from, told] of paths) {
    for (const { event, state } of Object.values(graph[from]?.transitions ?? {})) {
      const to = nameOf(state)
      if (event.type === 'observe' && !paths.has(to)) paths.set(to, [...told, event])
    }
  }
  return paths
}

interface Snapshot {
  readonly value: unknown
  readonly context: Context
}

/** Question by question: what is asked, what is reached, and the trail that led there. */
function same(tree: Tree, snapshot: Snapshot, expected: Walk): void {
  const state = String(snapshot.value)
  if (expected.finished) expect(state).toMatch(/^end\//)
  else expect(state).toBe(expected.asks?.question)
  const told = walkOf(tree, snapshot)
  // Far quicker where they are equal, and they are compared a hundred thousand times.
  if (!isDeepStrictEqual(told, expected)) expect(told).toEqual(expected)
}

function merged(answers: Answers, { observation, answer }: Told): Answers {
  const before = answers[observation]
  const both =
    typeof answer === 'object' && !('reading' in answer) && typeof before === 'object'
      ? { ...before, ...answer }
      : answer
  return { ...answers, [observation]: both as Answer }
}

/** Every choice; of a screen of signs none, each alone, and all unsure; each band of a measure. */
function everyEvent(tree: Tree): readonly AnswerEvent[] {
  return Object.values(tree.observations).flatMap(observation =>
    valuesOf(tree, observation).map(answer => ({
      type: 'observe' as const,
      observation: observation.id,
      answer
    }))
  )
}

function valuesOf(tree: Tree, observation: Observation): readonly Answer[] {
  switch (observation.kind) {
    case 'choice':
      return [...observation.answers.map(a => a.id), 'unsure']
    case 'measure':
      return [...bandsOf(tree, observation).map(band => band.interval), 'unsure']
    case 'signs': {
      const all = (value: 'no' | 'unsure') =>
        Object.fromEntries(observation.signs.map(s => [s.id, value]))
      return [
        all('no'),
        ...observation.signs.map(s => ({ ...all('no'), [s.id]: 'yes' as const })),
        all('unsure')
      ]
    }
  }
}
