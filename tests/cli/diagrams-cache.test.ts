import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterAll, beforeEach, describe, expect, test } from 'vitest'
import { diagramsThrough } from '../../src/cli/diagrams-cache.ts'
import { loadThrough } from '../../src/cli/loaded-cache.ts'
import { loadAnew } from '../../src/cli/read-project.ts'
import { diagramsOf, keepDiagrams, TreeDiagrams } from '../../src/diagrams/tree-diagrams.ts'
import { evaluate } from '../../src/evaluate/evaluate.ts'
import { callOf } from '../../src/evaluate/facts.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { rawCall } from '../helpers/random-call.ts'
import { shippedTrees } from '../helpers/shipped.ts'
import { usualExcept } from '../helpers/usual.ts'
import { wholeProject } from '../load/project-files.ts'

const folder = mkdtempSync(join(tmpdir(), 'jarside-diagrams-'))
beforeEach(() => {
  rmSync(folder, { recursive: true, force: true })
  mkdirSync(folder)
})
afterAll(() => rmSync(folder, { recursive: true }))

const entries = () => readdirSync(folder).map(name => join(folder, name))
const [tree] = await shippedTrees()
if (tree === undefined) throw new Error('no tree loads')

/** The tree once more, so that its diagrams come out of the folder, where there are any. */
function kept(of: Tree): Tree {
  const copy = { ...of }
  keepDiagrams(copy, () => diagramsThrough(folder, of.id, copy))
  return copy
}

describe('what is kept of a tree is what compiling it anew gives', () => {
  test('the diagrams of every shipped tree, vertex by vertex', async () => {
    for (const one of await shippedTrees()) {
      const fresh = diagramsThrough(folder, one.id, one)
      const again = diagramsThrough(folder, one.id, one)
      expect(again, one.id).not.toBe(fresh)
      expect(again.packed(), one.id).toEqual(fresh.packed())
      expect(again.packed(), one.id).toEqual(new TreeDiagrams(one).packed())
      expect(again.diagrams.count, one.id).toBeLessThan(fresh.diagrams.count)
    }
  })

  test('the evaluation of any call', () => {
    diagramsThrough(folder, tree.id, tree)
    const again = kept(tree)
    let open = 0
    fc.assert(
      fc.property(rawCall(tree), facts => {
        const { answers, either } = callOf(tree, facts)
        const { walk, ...fresh } = evaluate(tree, answers, either)
        const { possible, settled } = evaluate(again, answers, either)
        expect({ possible, settled }).toEqual({ possible: fresh.possible, settled: fresh.settled })
        if (!walk.finished) open++
      }),
      { numRuns: 100 }
    )
    expect(open).toBeGreaterThan(5)
    expect(diagramsOf(again)).not.toBe(diagramsOf(tree))
  })

  test('what is certain before the end, with the notes that are compiled beside what is kept', async () => {
    let early = 0
    for (const one of await shippedTrees()) {
      diagramsThrough(folder, one.id, one)
      const again = kept(one)
      const usual = Object.entries(usualExcept(one, {}))
      for (const [untold] of usual) {
        const answers = Object.fromEntries(usual.filter(([id]) => id !== untold))
        const { settled, walk } = evaluate(one, answers)
        expect(evaluate(again, answers).settled, `${one.id} ${untold}`).toEqual(settled)
        if (!walk.finished && settled !== null) early++
      }
    }
    expect(early).toBeGreaterThan(0)
  })

  test('a diagram that is joined from kept ones is the one that was there before', () => {
    diagramsThrough(folder, tree.id, tree)
    const { diagrams, ...rest } = diagramsThrough(folder, tree.id, tree)
    const again = new TreeDiagrams(tree, rest.variables, diagrams)
    const before = diagrams.count
    for (const side of ['person', 'container', 'batch', 'use'] as const) {
      expect(again.of(side)).toBe(diagramsThrough(folder, tree.id, tree).of(side))
    }
    // What compiling makes on the way is new; what it comes to is found again.
    expect(diagrams.count).toBeGreaterThan(before)
  })
})

describe('an entry that is not what was written is left aside, and written anew', () => {
  const expected = new TreeDiagrams(tree).packed()

  test('a byte turned anywhere, an end cut off, nothing at all', () => {
    diagramsThrough(folder, 'key', tree)
    const [entry = ''] = entries()
    const bytes = readFileSync(entry)
    for (const at of [0, 31, 32, 60, bytes.length >> 1, bytes.length - 1]) {
      const turned = Buffer.from(bytes)
      turned[at] = (turned[at] ?? 0) ^ 1
      writeFileSync(entry, turned)
      expect(diagramsThrough(folder, 'key', tree).packed()).toEqual(expected)
      expect(readFileSync(entry).equals(bytes)).toBe(true)
    }
    for (const length of [0, 7, 32, bytes.length - 1]) {
      writeFileSync(entry, bytes.subarray(0, length))
      expect(diagramsThrough(folder, 'key', tree).packed()).toEqual(expected)
    }
  })

  test('one that stands under the name of another key', () => {
    diagramsThrough(folder, 'key', tree)
    const [entry = ''] = entries()
    writeFileSync(join(folder, 'other'), readFileSync(entry))
    const before = readFileSync(join(folder, 'other'))
    diagramsThrough(folder, 'other', tree)
    expect(readFileSync(join(folder, 'other')).equals(before)).toBe(false)
  })

  test('a folder that is missing, or one in which another process writes the same', () => {
    expect(diagramsThrough(join(folder, 'gone'), 'key', tree).packed()).toEqual(expected)
    writeFileSync(join(folder, `key.${process.pid}.part`), '')
    expect(diagramsThrough(folder, 'key', tree).packed()).toEqual(expected)
  })
})

test('a loaded tree takes its diagrams from the folder, and other content has its own', async () => {
  const loaded = join(folder, 'loaded')
  const diagrams = join(folder, 'diagrams')
  for (const made of [loaded, diagrams]) mkdirSync(made)
  const cache = { folder: loaded, diagrams, code: 'a' }
  const files = wholeProject()
  const of = async (content: typeof files) => {
    const [first] = (await loadThrough(cache, content, loadAnew)).trees
    if (first === undefined) throw new Error('no tree loads')
    return diagramsOf(first)
  }
  const [fresh, again] = [await of(files), await of(files)]
  expect(readdirSync(diagrams)).toHaveLength(1)
  expect(again.packed()).toEqual(fresh.packed())
  await of(files.map(({ path, text }) => ({ path, text: `${text}\n` })))
  expect(readdirSync(diagrams)).toHaveLength(2)
})
