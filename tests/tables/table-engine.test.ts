import fc from 'fast-check'
import { beforeAll, describe, expect, test } from 'vitest'
import { randomNumbers } from '../../src/science/random-numbers.ts'
import { dmnOf } from '../../src/tables/dmn.ts'
import { decisionName } from '../../src/tables/names.ts'
import type { Table } from '../../src/tables/table.ts'
import { lensesOf, tablesOf } from '../../src/tables/tables.ts'
import type { Answers } from '../../src/tree/answers.ts'
import { emergenciesTold } from '../../src/tree/emergency.ts'
import { type Lens, lensName } from '../../src/tree/lens.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { everySet, sizeOf } from '../helpers/brute-force.ts'
import { randomTree } from '../helpers/random-tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'
import { sketch } from '../helpers/sketch.ts'
import { usualExcept } from '../helpers/usual.ts'
import { type Context, openInEngine } from './outside-engine.ts'
import { boundaries, randomAnswers } from './table-answers.ts'
import { contextOf, inputsOf, saidByWalk, speaking } from './table-facts.ts'

interface Opened {
  readonly lens: Lens
  readonly tables: readonly Table[]
  readonly evaluate: Awaited<ReturnType<typeof openInEngine>>
}

async function opened(
  tree: Tree,
  mostRows?: number,
  lenses = lensesOf(tree)
): Promise<readonly Opened[]> {
  const all: Opened[] = []
  for (const lens of lenses) {
    const tables = tablesOf(tree, lens, mostRows)
    const evaluate = await openInEngine(dmnOf(tree, tables, {}), { remember: true })
    all.push({ lens, tables, evaluate })
  }
  return all
}

/** What the engine says of a set of answers: each table that speaks of it is asked. */
function saidByEngine({ tables, evaluate }: Opened, context: Context): string[] {
  return speaking(tables, context).flatMap(
    table => evaluate(`decision_${decisionName(table)}`, context) ?? []
  )
}

const known = new WeakMap<readonly Opened[], ReturnType<typeof inputsOf>>()
function inputsOfAll(all: readonly Opened[]): ReturnType<typeof inputsOf> {
  const inputs = known.get(all) ?? inputsOf(all.flatMap(({ tables }) => tables))
  known.set(all, inputs)
  return inputs
}

function disagreements(tree: Tree, all: readonly Opened[], answers: Answers): readonly string[] {
  const emergency = emergenciesTold(tree, answers).length > 0
  const context = contextOf(tree, inputsOfAll(all), answers)
  return all.flatMap(one => {
    // The tables on all but the person leave emergencies out: no row may fit.
    const wanted = emergency && one.lens !== 'person' ? [] : [saidByWalk(tree, one.lens, answers)]
    const said = saidByEngine(one, context)
    return `${said}` === `${wanted}` ? [] : [`${lensName(one.lens)}: ${said} for ${wanted}`]
  })
}

/** The other trees whose tables this engine opens within seconds; it takes minutes over the largest. */
const SMALL = ['outside-this-tool', 'sourdough-starter', 'vinegar-mother']
const every = process.env.JARSIDE_ENGINE_READS_EVERY_TREE !== undefined
const otherTrees = (await shippedTrees()).slice(1).filter(({ id }) => every || SMALL.includes(id))
const OF_FIRST = every ? 10_000 : 1_500
const OF_OTHERS = every ? 10_000 : 250

describe('an engine from outside reads the tables as walk() reads the tree', () => {
  let tree: Tree
  let all: readonly Opened[]
  beforeAll(async () => {
    ;[tree] = (await shippedTrees()) as [Tree]
    // The tables of its batch and of its use alone have some 20,000 rows.
    const lenses = lensesOf(tree).filter(lens => every || (lens !== 'batch' && lens !== 'use'))
    all = await opened(tree, undefined, lenses)
  }, 900_000)

  test(`on ${OF_FIRST} random sets of answers of the first tree`, () => {
    const next = randomNumbers(5)
    const seen = new Map<string, number>()
    // Tracks and use on every set; the notes take turns, each on every eighth.
    const turns = Array.from({ length: 8 }, (_, turn) =>
      all.filter(({ lens }, i) => typeof lens !== 'object' || i % 8 === turn)
    )
    for (let i = 0; i < OF_FIRST; i++) {
      const answers = randomAnswers(tree, next)
      expect(disagreements(tree, turns[i % 8] ?? [], answers), JSON.stringify(answers)).toEqual([])
      const key = saidByWalk(tree, 'batch', answers)
      seen.set(key, (seen.get(key) ?? 0) + 1)
    }
    // Sets that all came to the same would show little.
    expect(seen.size).toBeGreaterThanOrEqual(7)
    expect(Math.min(...seen.values())).toBeGreaterThan(1)
  })

  // Of the other trees what is said of people, container, batch and use.
  test.each(otherTrees)(
    `on ${OF_OTHERS} random sets of answers of $id`,
    async other => {
      const lenses = lensesOf(other).filter(lens => typeof lens !== 'object')
      const tracks = await opened(other, undefined, lenses)
      const next = randomNumbers(8)
      for (let i = 0; i < OF_OTHERS; i++) {
        const answers = randomAnswers(other, next)
        expect(disagreements(other, tracks, answers), JSON.stringify(answers)).toEqual([])
      }
    },
    3_600_000
  )

  test('on both sides of every limit of every measure, with each instrument', () => {
    const next = randomNumbers(6)
    const measures = Object.values(tree.observations).flatMap(one =>
      one.kind === 'measure' && all.some(({ tables }) => asks(tables, one.id)) ? [one] : []
    )
    expect(measures.map(({ id }) => id)).toEqual(['jar-ph', 'day', 'mix-acidity'])
    let ways: readonly Answers[] = [{}]
    // The fresh mix is asked on the first day alone, while the pH is unknown: it has limits of its own.
    for (const measure of measures.filter(({ id }) => id !== 'mix-acidity')) {
      const told = [...boundaries(tree, measure), 'unsure']
      ways = ways.flatMap(way => told.map(answer => ({ ...way, [measure.id]: answer })))
    }
    expect(ways.length).toBeGreaterThan(1000)
    const mix = measures.find(({ id }) => id === 'mix-acidity') as (typeof measures)[number]
    const firstDay: Answers = { 'jar-ph': 'unsure', day: { low: 0, reading: 0, high: 0 } }
    ways = [
      ...ways,
      ...[...boundaries(tree, mix), 'unsure'].map(answer => ({ ...firstDay, [mix.id]: answer }))
    ]
    const measured = all.filter(({ tables }) => measures.some(({ id }) => asks(tables, id)))
    // Every seventh pair of the two: each limit of either comes up beside many of the other.
    const some = ways.filter((_, i) => every || i % 7 === 0)
    some.forEach((way, i) => {
      const rest = i % 3 === 0 ? randomAnswers(tree, next) : usualExcept(tree, {})
      const answers = { ...rest, ...way }
      expect(disagreements(tree, measured, answers), JSON.stringify(answers)).toEqual([])
    })
  })

  test('as it comes, with nothing remembered between cells, it says the same', async () => {
    const next = randomNumbers(7)
    const [person] = all as [Opened]
    const plain = await openInEngine(dmnOf(tree, person.tables, {}), { remember: false })
    for (let i = 0; i < 10; i++) {
      const answers = randomAnswers(tree, next)
      const context = contextOf(tree, inputsOfAll([person]), answers)
      const said = saidByEngine({ ...person, evaluate: plain }, context)
      expect(said).toEqual([saidByWalk(tree, 'person', answers)])
    }
  })
})

const asks = (tables: readonly Table[], id: string) =>
  tables.some(({ inputs }) => inputs.some(({ observation }) => observation === id))

describe('an engine from outside agrees on small trees of every kind', () => {
  test('on 25 random ones, whole and split to pieces', async () => {
    const next = randomNumbers(8)
    for (const tree of fc.sample(randomTree, { seed: 11, numRuns: 25 })) {
      for (const mostRows of [500, 3]) {
        const all = await opened(tree, mostRows)
        const sets =
          sizeOf(tree) <= 200
            ? everySet(tree)
            : Array.from({ length: 200 }, () => randomAnswers(tree, next))
        for (const answers of sets) {
          expect(disagreements(tree, all, answers), JSON.stringify(answers)).toEqual([])
        }
      }
    }
  })

  test('on one whose emergencies are a sign and an answer of a choice', async () => {
    const tree = sketch(
      {
        people: { '?!collapse': '+emergency *call', '?ill': '+doctor-today', else: '→ eye' },
        eye: { '!glass': '+emergency → growth', dust: '+ask-doctor → growth', unsure: '→ growth' },
        growth: {
          '!fuzzy': '+likely-mold = likely-mold',
          wet: '= normal-growth',
          unsure: '= wait-and-recheck'
        }
      },
      { about: { people: 'person', eye: 'person' } }
    )
    const next = randomNumbers(9)
    const all = await opened(tree)
    let emergencies = 0
    for (let i = 0; i < 300; i++) {
      const answers = randomAnswers(tree, next)
      emergencies += emergenciesTold(tree, answers).length > 0 ? 1 : 0
      expect(disagreements(tree, all, answers), JSON.stringify(answers)).toEqual([])
    }
    expect(emergencies).toBeGreaterThan(30)
  })
})
