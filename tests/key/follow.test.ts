import { describe, expect, test } from 'vitest'
import { diagramsOf } from '../../src/diagrams/tree-diagrams.ts'
import { walk } from '../../src/evaluate/walk.ts'
import { followKey } from '../../src/key/follow.ts'
import { type Key, keyOf } from '../../src/key/key.ts'
import { completed } from '../../src/prove/witness.ts'
import { randomNumbers } from '../../src/science/random-numbers.ts'
import { fits } from '../../src/tables/because.ts'
import { tablesOf } from '../../src/tables/tables.ts'
import { type Answers, measureOf, signsOf } from '../../src/tree/answers.ts'
import { measured } from '../../src/tree/reading.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { randomAnswers } from '../tables/table-answers.ts'

const { trees } = await loadShipped()
const keys = new Map(trees.map(tree => [tree.id, keyOf(tree)]))
const keyIn = (tree: Tree): Key => keys.get(tree.id) ?? keyOf(tree)

/** On paper a sign that is not marked is not there. */
const marked = (tree: Tree, answers: Answers): Answers => ({
  ...answers,
  ...Object.fromEntries(
    Object.values(tree.observations).flatMap(observation =>
      observation.kind === 'signs'
        ? [
            [
              observation.id,
              {
                ...Object.fromEntries(observation.signs.map(({ id }) => [id, 'no' as const])),
                ...signsOf(answers, observation.id)
              }
            ]
          ]
        : []
    )
  )
})

/** An interval that no instrument has stands for a part of the line: in its place what the first one reads. */
const readOff = (tree: Tree, answers: Answers): Answers =>
  Object.fromEntries(
    Object.entries(answers).map(([id, answer]) => {
      const observation = tree.observations[id]
      const told = measureOf(answers, id)
      if (observation?.kind !== 'measure' || told === undefined || told === 'unsure') {
        return [id, answer]
      }
      return [id, measured(observation, told.reading, observation.instruments[0]?.id)]
    })
  )

/** What a finger on the key comes to, and what the walk says of the answers that the key asked for. */
function bothWays(tree: Tree, answers: Answers) {
  const key = keyIn(tree)
  const { outcome, passed } = followKey(key, tree, answers)
  const asked = new Set(passed.map(number => key.leads[number - 1]?.observation))
  const given = Object.fromEntries(Object.entries(answers).filter(([id]) => asked.has(id)))
  const walked = walk(tree, given)
  const plain = ({ notes, ...rest }: typeof outcome) => ({ ...rest, notes: [...notes].sort() })
  return { key: plain(outcome), walk: walked.finished ? plain(walked.outcome) : walked.asks }
}

describe.each(trees.map(tree => [tree.id, tree] as const))('the key of %s', (_, tree) => {
  const { leads } = keyIn(tree)

  test('has every lead that anybody can come to, each with where it came from', () => {
    expect(leads[0]?.question).toBe(tree.start)
    for (const { number, from } of leads.slice(1)) {
      expect([number, from.length > 0]).toEqual([number, true])
    }
  })

  test('goes on to higher numbers alone, but for a second look', () => {
    const back = leads.flatMap(({ number, turns }) =>
      turns.flatMap(({ goes }) =>
        'to' in goes && goes.to <= number && goes.as === undefined ? [[number, goes.to]] : []
      )
    )
    expect(back).toEqual([])
  })

  test('comes to what the walk comes to, on 1,500 random sets of answers', () => {
    const next = randomNumbers(17)
    for (let count = 0; count < 1500; count += 1) {
      const { key, walk } = bothWays(tree, randomAnswers(tree, next))
      expect(key).toEqual(walk)
    }
  })
})

/** Their tables are made within seconds. */
const TABLED = ['vinegar-mother', 'sourdough-starter', 'outside-this-tool']

describe.each(TABLED)('on every pattern of the decision tables of %s', id => {
  const tree = trees.find(each => each.id === id)
  if (tree === undefined) throw new Error(`no tree ${id}`)

  test.each(['person', 'container', 'batch', 'use'] as const)(
    'for the %s the key comes to what the walk comes to',
    lens => {
      const compiled = diagramsOf(tree)
      let patterns = 0
      for (const { inputs, rows } of tablesOf(tree, lens)) {
        for (const { cells } of rows) {
          const open = compiled.variables.map(({ observation, sign = null, values }) => {
            const own = inputs.flatMap((input, at) =>
              input.observation === observation && ('sign' in input ? input.sign : null) === sign
                ? [{ input, cell: cells[at] ?? null }]
                : []
            )
            const asks = own.map(({ input }) => input)
            const wants = own.map(({ cell }) => cell)
            return values.map(value => fits(value, asks, wants))
          })
          const answers = marked(tree, completed(compiled, new Map(), open))
          const { key, walk } = bothWays(tree, readOff(tree, answers))
          expect(key).toEqual(walk)
          patterns += 1
        }
      }
      expect(patterns).toBeGreaterThan(2)
    }
  )
})
