import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { SpokenAdvice } from '../../src/evaluate/advice.ts'
import { type Evaluation, evaluate } from '../../src/evaluate/evaluate.ts'
import { callOf, type Fact } from '../../src/evaluate/facts.ts'
import { noGentler } from '../../src/evaluate/possible.ts'
import { emergenciesTold } from '../../src/tree/emergency.ts'
import { TRACKS } from '../../src/tree/observation.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { missing, rawCall, rawFact, rawRest } from '../helpers/random-call.ts'
import { shippedTrees } from '../helpers/shipped.ts'
import { usualExcept } from '../helpers/usual.ts'

// Raw readings with their instruments, signs one at a time, and things told twice: what a call is made
// of, and not the representatives that the prover works with.
const trees = await shippedTrees()
const each = trees.map(tree => [tree.id, tree] as const)

const evaluated = (tree: Tree, facts: readonly Fact[]): Evaluation => {
  const { answers, either } = callOf(tree, facts)
  return evaluate(tree, answers, either)
}

/** The call gone on with, every question answered as it comes: what is known at each step, and at the end. */
function* callGoingOn(
  tree: Tree,
  facts: readonly Fact[],
  rest: Readonly<Record<string, Fact['answer']>>
): Generator<Evaluation> {
  for (let told = facts; ; ) {
    const now = evaluated(tree, told)
    yield now
    const { answers, walk } = now
    if (walk.asks === null) return
    const { observation } = walk.asks
    told = [...told, missing(answers, observation, rest[observation] as Fact['answer'])]
  }
}

/** Every screen about people, none of it seen. */
const nobodyIll = (tree: Tree): readonly Fact[] =>
  Object.values(tree.observations).flatMap(({ id, about }) =>
    about === 'person' && Object.hasOwn(usualExcept(tree, {}), id)
      ? [{ observation: id, answer: usualExcept(tree, {})[id] as Fact['answer'] }]
      : []
  )

/** Each danger sign of the container and the batch as a fact. */
const dangers = (tree: Tree): readonly Fact[] =>
  Object.values(tree.observations).flatMap((observation): Fact[] => {
    if (observation.about === 'person' || observation.kind === 'measure') return []
    return observation.kind === 'signs'
      ? observation.signs
          .filter(({ danger }) => danger)
          .map(({ id }) => ({ observation: observation.id, answer: { [id]: 'yes' } }))
      : observation.answers
          .filter(({ danger }) => danger)
          .map(({ id }) => ({ observation: observation.id, answer: id }))
  })

const settledOf = ({ settled }: Evaluation) => {
  if (settled === null) throw new Error('a finished walk is settled')
  return settled
}

/** Everything that somebody is told to do, look at again or call; the order within a list is of no matter here. */
const stepsOf = ({ doNow, later, clean, keep, startAgain, refer, recheck }: SpokenAdvice) => ({
  lists: [doNow, later, clean, keep, startAgain, refer].map(list => [...list].sort()),
  recheck
})

const isEmergency = (tree: Tree, { answers }: Evaluation) =>
  emergenciesTold(tree, answers).length > 0

/** How often an outcome was certain before the end, in all trees together. */
let offered = 0

describe.each(each)('%s, evaluated in the middle of a call', (_, tree) => {
  const goingOn = fc.tuple(rawCall(tree), rawRest(tree))

  test('what is possible holds the outcome that the call comes to', () => {
    fc.assert(
      fc.property(goingOn, ([facts, rest]) => {
        const now = evaluated(tree, facts)
        const end = [...callGoingOn(tree, facts, rest)].at(-1) as Evaluation
        if (isEmergency(tree, end)) return
        const { outcome } = end.walk
        for (const track of TRACKS) expect(now.possible[track]).toContain(outcome[track])
        expect(now.possible.use).toContain(outcome.use)
      }),
      { numRuns: 100 }
    )
  })

  test('what is certain before the end is what is said at the end, step by step', () => {
    fc.assert(
      fc.property(goingOn, fc.constantFrom(...dangers(tree)), ([told, rest], danger) => {
        // Nothing is certain while an emergency can still be asked for: people first, then what settles most.
        const facts = [...nobodyIll(tree), danger, ...told]
        const call = [...callGoingOn(tree, facts, rest)]
        const end = call.at(-1) as Evaluation
        if (isEmergency(tree, end)) return
        for (const { settled } of call.slice(0, -1)) {
          if (settled === null) continue
          offered++
          expect(stepsOf(settled.advice)).toEqual(stepsOf(settledOf(end).advice))
          expect({ ...settled.outcome, notes: [] }).toEqual({ ...end.walk.outcome, notes: [] })
        }
      }),
      { numRuns: 200 }
    )
  })

  test('telling more never frees', () => {
    const more = goingOn.chain(([facts, rest]) =>
      fc.tuple(
        fc.constant(facts),
        fc.constant(rest),
        fc.constantFrom(...Object.values(tree.observations)).chain(rawFact)
      )
    )
    fc.assert(
      fc.property(more, ([facts, , another]) => {
        const before = evaluated(tree, facts)
        const after = evaluated(tree, [...facts, another])
        if (isEmergency(tree, before) || isEmergency(tree, after)) return
        expect(noGentler(tree, before.possible.atLeast, after.possible.atLeast)).toBe(true)
      }),
      { numRuns: 150 }
    )
  })

  test('of two told things each track and the use are as cautious as either alone', () => {
    const asked = new Set(Object.values(tree.questions).map(question => question.asks))
    const twice = fc
      .constantFrom(...Object.values(tree.observations).filter(({ id }) => asked.has(id)))
      .chain(observation => fc.tuple(rawFact(observation), rawFact(observation), rawRest(tree)))
    fc.assert(
      fc.property(twice, fc.boolean(), ([a, b, rest], ordinary) => {
        const known = Object.entries(ordinary ? usualExcept(tree, {}) : rest)
          .filter(([id]) => id !== a.observation)
          .map(([observation, answer]): Fact => ({ observation, answer }))
        // Of a screen of signs the rest stays as it is.
        const screen = Object.entries(rest)
          .filter(([id]) => id === a.observation && tree.observations[id]?.kind === 'signs')
          .map(([observation, answer]): Fact => {
            const told = { ...(a.answer as object), ...(b.answer as object) }
            const others = Object.entries(answer).filter(([sign]) => !Object.hasOwn(told, sign))
            return { observation, answer: Object.fromEntries(others) as Fact['answer'] }
          })
        const both = evaluated(tree, [...known, ...screen, a, b])
        if (isEmergency(tree, both)) return
        for (const alone of [a, b]) {
          const one = evaluated(tree, [...known, ...screen, alone])
          if (!one.walk.finished || !both.walk.finished) continue
          expect(noGentler(tree, one.walk.outcome, both.walk.outcome)).toBe(true)
        }
      }),
      { numRuns: 150 }
    )
  })
})

test('outcomes were certain before the end often enough to judge', () => {
  expect(offered).toBeGreaterThan(0)
})

describe('a count told twice', () => {
  const dough = trees.find(({ countsDays }) => countsDays === 'starter-age') as Tree
  const age = (days: number): Fact => ({
    observation: 'starter-age',
    answer: { low: days, reading: days, high: days }
  })

  test('of a starter that passes at either age nothing stricter is certain', () => {
    const { possible } = evaluated(dough, [age(9), age(12)])
    expect(possible.use).toContain('as-directed')
    expect(possible.batch).toContain('normal-growth')
  })
})
