import { DmnModdle } from 'dmn-moddle'
import fc from 'fast-check'
import { beforeAll, describe, expect, test } from 'vitest'
import { spaceOf } from '../../src/diagrams/space.ts'
import { randomNumbers } from '../../src/science/random-numbers.ts'
import { DMN_NAMESPACE, dmnOf } from '../../src/tables/dmn.ts'
import { variableName } from '../../src/tables/names.ts'
import { MOST_ROWS } from '../../src/tables/split.ts'
import type { Cell, Table } from '../../src/tables/table.ts'
import { lensesOf, tablesOf } from '../../src/tables/tables.ts'
import { emergenciesTold } from '../../src/tree/emergency.ts'
import { type Cut, cutsOf, sortCuts } from '../../src/tree/range.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { randomTree } from '../helpers/random-tree.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { randomAnswers } from './table-answers.ts'
import { contextOf, inputsOf, rowsMet, saidByWalk } from './table-facts.ts'

let tree: Tree
let jar: Tree
let sources: Awaited<ReturnType<typeof loadShipped>>['sources']
let shipped: readonly (readonly Table[])[]
beforeAll(async () => {
  const loaded = await loadShipped()
  // Its tables are made within seconds, and some of them are long enough to be split.
  tree = loaded.trees.find(({ id }) => id === 'vinegar-mother') as Tree
  jar = loaded.trees[0] as Tree
  sources = loaded.sources
  shipped = lensesOf(tree).map(lens => tablesOf(tree, lens))
}, 300_000)

describe('every set of answers fits exactly one row', () => {
  test('on 500 random sets of the shipped tree, tried row by row', () => {
    const next = randomNumbers(21)
    const inputs = inputsOf(shipped.flat())
    for (let i = 0; i < 500; i++) {
      const answers = randomAnswers(tree, next)
      const emergency = emergenciesTold(tree, answers).length > 0
      const context = contextOf(tree, inputs, answers)
      for (const tables of shipped) {
        const { lens, outputs } = tables[0] as Table
        const met = rowsMet(tables, context)
        const wanted = emergency && lens !== 'person' ? [] : [saidByWalk(tree, lens, answers)]
        expect(met.map(({ level }) => outputs[level])).toEqual(wanted)
      }
    }
  })

  test('on the shipped tree no two rows overlap and none is missing, counted exactly', () => {
    for (const tables of shipped) expect(faultsOf(tables)).toEqual([])
  })

  test('on 200 random trees, whole and split to pieces, counted exactly', () => {
    let split = 0
    fc.assert(
      fc.property(randomTree, fc.constantFrom(MOST_ROWS, 4), (small, mostRows) => {
        for (const lens of lensesOf(small)) {
          const tables = tablesOf(small, lens, mostRows)
          if (tables.length > 1) split++
          expect(faultsOf(tables)).toEqual([])
        }
      }),
      { numRuns: 200, seed: 3 }
    )
    expect(split).toBeGreaterThan(50)
  })
})

describe('tables are for reading', () => {
  test('none of the shipped tree has more than 500 rows', () => {
    const long = shipped.flat().filter(({ rows }) => rows.length > MOST_ROWS)
    expect(long.map(({ lens }) => lens)).toEqual([])
  })

  test('the rows of a part keep to what its title says', () => {
    const parts = shipped.flat().filter(({ part }) => (part?.where.length ?? 0) > 0)
    expect(parts.length).toBeGreaterThan(10)
    for (const { part, inputs, rows } of parts) {
      for (const { input, cell } of part?.where ?? []) {
        const at = inputs.findIndex(one => variableName(one) === variableName(input))
        expect(rows.map(({ cells }) => cells[at])).toEqual(rows.map(() => cell))
      }
    }
  })

  test('inputs stand in the order in which the tree asks', () => {
    const order = [...new Set(spaceOf(tree).map(({ observation }) => observation))]
    for (const { inputs } of shipped.flat()) {
      const at = inputs.map(({ observation }) => order.indexOf(observation))
      expect(at).toEqual([...at].sort((a, b) => a - b))
    }
  })

  test('a limit of taste is a matter of the reading alone', () => {
    const tables = tablesOf(jar, { note: 'too-sour-to-drink' })
    const inputs = tables.flatMap(table => table.inputs.map(variableName))
    expect(inputs).toContain('jar_ph__reading')
    const others = tablesOf(jar, { note: 'film-without-acid' })
    expect(others.flatMap(table => table.inputs.map(variableName))).not.toContain('jar_ph__reading')
  })

  test('every row that says something names sources that the ledger has', () => {
    for (const { rows } of shipped.flat()) {
      for (const { level, because } of rows) {
        if (level > 0) expect(because.length).toBeGreaterThan(0)
        expect(because.filter(id => !Object.hasOwn(sources, id))).toEqual([])
      }
    }
  })
})

describe('a table is OMG DMN 1.3', () => {
  test('dmn-moddle reads every one of them without a warning', async () => {
    for (const tables of shipped) {
      const { rootElement, warnings } = await new DmnModdle().fromXML(
        dmnOf(tree, tables, sources),
        'dmn:Definitions'
      )
      expect(warnings).toEqual([])
      expect(rootElement.$descriptor.ns.name).toBe('dmn:Definitions')
      const decisions = rootElement.drgElement.filter(one => one.$type === 'dmn:Decision')
      expect(decisions.map(one => one.decisionLogic?.hitPolicy)).toEqual(tables.map(() => 'UNIQUE'))
      expect(decisions.map(one => one.decisionLogic?.rule?.length)).toEqual(
        tables.map(({ rows }) => rows.length)
      )
      expect(decisions.map(one => one.decisionLogic?.annotation?.[0]?.name)).toEqual(
        tables.map(() => 'sources')
      )
    }
  })

  test('ids are names and stand once, and every reference leads to one', () => {
    for (const tables of shipped) {
      const xml = dmnOf(tree, tables, sources)
      expect(xml).toContain(`<definitions xmlns="${DMN_NAMESPACE}"`)
      const ids = [...xml.matchAll(/ id="([^"]*)"/g)].map(match => match[1] as string)
      expect(ids.filter(id => !/^[A-Za-z_][\w.-]*$/.test(id))).toEqual([])
      const known = new Set(ids)
      expect(known.size).toBe(ids.length)
      const references = [...xml.matchAll(/ href="#([^"]*)"/g)].map(match => match[1] as string)
      expect(references.filter(id => !known.has(id))).toEqual([])
      const types = new Set([...xml.matchAll(/ typeRef="([^"]*)"/g)].map(match => match[1]))
      expect([...types].filter(type => type !== 'string' && type !== 'number')).toEqual([])
    }
  })

  test('a title full of markup and control signs comes back as it was, but for the signs', async () => {
    const title = `Salt & "sugar" <b>'less'\u0001\n</definitions> ]]> \u{1F9C2}`
    const every = Object.fromEntries(Object.keys(sources).map(id => [id, { title, address: null }]))
    const xml = dmnOf(tree, tablesOf(tree, 'container'), every)
    const { rootElement, warnings } = await new DmnModdle().fromXML(xml, 'dmn:Definitions')
    expect(warnings).toEqual([])
    const named = rootElement.drgElement.filter(one => one.$type === 'dmn:KnowledgeSource')
    expect(named.length).toBeGreaterThan(0)
    for (const { name } of named) expect(name).toBe(title.replace('\u0001', ''))
  })
})

/** What is wrong with tables as one whole: rows that overlap, or sets of answers that fit none. */
function faultsOf(tables: readonly Table[]): readonly string[] {
  const inputs = new Map(
    tables.flatMap(table => table.inputs.map(input => [variableName(input), input] as const))
  )
  const rows = tables.flatMap(table =>
    table.rows.map(row => new Map(table.inputs.map((one, i) => [variableName(one), row.cells[i]])))
  )
  // Every column as the places that a cell covers: answers, or bands between all limits there are.
  const sizes: number[] = []
  const covered: boolean[][][] = rows.map(() => [])
  for (const [name, input] of inputs) {
    const cells = rows.map(row => row.get(name) ?? null)
    const cuts = sortCuts(
      cells.flatMap(cell => (cell && 'within' in cell ? cutsOf(cell.within) : []))
    )
    const size = input.kind === 'number' ? cuts.length + 1 : input.values.length
    sizes.push(size)
    cells.forEach((cell, row) => {
      const places = Array.from({ length: size }, (_, place) =>
        input.kind === 'number'
          ? coversBand(cell, cuts, place)
          : cell === null || ('among' in cell && cell.among.includes(input.values[place] as string))
      )
      covered[row]?.push(places)
    })
  }
  const faults: string[] = []
  for (let a = 0; a < covered.length; a++) {
    for (let b = a + 1; b < covered.length; b++) {
      const [some, others] = [covered[a] as boolean[][], covered[b] as boolean[][]]
      const apart = some.some((places, i) => !places.some((is, place) => is && others[i]?.[place]))
      if (!apart) faults.push(`rows ${a + 1} and ${b + 1} overlap`)
    }
  }
  const count = (places: boolean[][]) =>
    places.reduce((n, column) => n * BigInt(column.filter(Boolean).length), 1n)
  const sum = covered.reduce((n, places) => n + count(places), 0n)
  const whole = sizes.reduce((n, size) => n * BigInt(size), 1n)
  if (sum !== whole) faults.push(`${sum} of ${whole} sets of entries are covered`)
  return faults
}

function coversBand(cell: Cell | undefined, cuts: readonly Cut[], band: number): boolean {
  if (!cell || !('within' in cell)) return true
  const own = cutsOf(cell.within)
  const { atLeast, over } = cell.within
  const first = own.find(
    ({ at, side }) => at === (atLeast ?? over) && side === (over === undefined ? 'below' : 'above')
  )
  const start = atLeast === undefined && over === undefined ? undefined : first
  const end = own.find(cut => cut !== start)
  const place = (cut: Cut) => cuts.findIndex(one => one.at === cut.at && one.side === cut.side)
  return (start === undefined || band > place(start)) && (end === undefined || band <= place(end))
}
