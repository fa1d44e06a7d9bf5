import { describe, expect, test } from 'vitest'
import { possible } from '../../src/evaluate/possible.ts'
import { walk } from '../../src/evaluate/walk.ts'
import type { Observation } from '../../src/tree/observation.ts'
import type { PracticeCaller } from '../../src/tree/practice-caller.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { usualExcept } from '../../src/tree/usual-answers.ts'
import { loadShipped } from '../helpers/shipped.ts'

const { trees, practice } = await loadShipped()
const callersOf = ({ id }: Tree) => practice.filter(({ tree }) => tree === id)
const outcomeOf = (tree: Tree, { answers }: PracticeCaller) =>
  walk(tree, usualExcept(tree, answers))

describe('the invented callers', () => {
  test('are at least 60, of every ferment, with those who are unsure or take it for another', () => {
    expect(practice.length).toBeGreaterThanOrEqual(60)
    expect(practice.filter(({ takesItFor }) => takesItFor !== null).length).toBeGreaterThan(2)
    expect(practice.filter(({ speaks }) => speaks === 'es').length).toBeGreaterThanOrEqual(9)
    expect(new Set(practice.map(({ difficulty }) => difficulty)).size).toBe(3)
    expect(new Set(practice.map(({ id }) => id)).size).toBe(practice.length)
  })

  test.each(practice.map(caller => [caller.id, caller] as const))(
    '%s gets an outcome',
    (_, one) => {
      const tree = trees.find(({ id }) => id === one.tree)
      expect(tree && outcomeOf(tree, one).finished).toBe(true)
      expect(one.takesItFor).not.toBe(one.tree)
    }
  )
})

describe.each(trees.map(tree => [tree.id, tree] as const))('of %s', (id, tree) => {
  const callers = callersOf(tree)

  test('there are enough to practice on', () => {
    expect(callers.length).toBeGreaterThanOrEqual(id === 'kombucha-jar' ? 15 : 5)
    expect(callers.some(({ answers }) => Object.values(answers).includes('unsure'))).toBe(true)
  })

  test('every verdict is met by one', () => {
    const all = possible(tree, {})
    const met = callers.map(one => outcomeOf(tree, one).outcome)
    const missing = (['person', 'container', 'batch'] as const).flatMap(track =>
      // An emergency is left out of what is possible until it is told.
      [...all[track], ...(track === 'person' ? ['emergency'] : [])].filter(
        verdict => verdict !== null && !met.some(outcome => outcome[track] === verdict)
      )
    )
    expect(missing).toEqual([])
  })
})

test('every answer that is a danger is told by some caller', () => {
  const told = new Set(practice.flatMap(({ answers }) => Object.entries(answers).flatMap(toldIn)))
  const dangers = trees.flatMap(({ observations }) =>
    Object.values(observations).flatMap(dangersOf)
  )
  expect(dangers.length).toBeGreaterThan(50)
  expect([...new Set(dangers)].filter(danger => !told.has(danger))).toEqual([])
})

function toldIn([id, answer]: readonly [string, PracticeCaller['answers'][string]]) {
  if (typeof answer === 'string') return [`${id} ${answer}`]
  return Object.entries(answer).flatMap(([sign, told]) => (told === 'yes' ? [`${id} ${sign}`] : []))
}

function dangersOf(observation: Observation): readonly string[] {
  if (observation.kind === 'measure') return []
  const parts = observation.kind === 'choice' ? observation.answers : observation.signs
  return parts.filter(({ danger }) => danger).map(each => `${observation.id} ${each.id}`)
}
