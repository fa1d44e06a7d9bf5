import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { sheetsOf } from '../../src/cli/figures-sheets.ts'
import { wordsOfTree } from '../../src/cli/words-of-tree.ts'
import { createWords, SOURCE_TAG } from '../../src/words/words.ts'
import { openShipped } from '../helpers/shipped.ts'
import { runCommand } from './run-command.ts'

const folder = mkdtempSync(join(tmpdir(), 'jarside-'))
afterAll(() => rmSync(folder, { recursive: true }))

function sharesFile(said: unknown): string {
  const file = join(folder, 'shares.json')
  writeFileSync(file, typeof said === 'string' ? said : JSON.stringify(said))
  return file
}

const figures = (...args: string[]) => runCommand(['figures', 'kombucha-jar', ...args])
/** One whose walks are all taken in no time, with each observation asked first in turn. */
const ofSmaller = (...args: string[]) => runCommand(['figures', 'outside-this-tool', ...args])

describe('the figures of a tree stand in one table', () => {
  test('with how answers were taken, and the bound beside the mean', async () => {
    const { code, output } = await ofSmaller()
    expect(code).toBe(0)
    expect(output).toContain('Answers are even. A choice: each answer and unsure equally likely.')
    expect(output).toContain('Exact: every walk is counted with its share.')
    expect(output).toMatch(/^to the end +\d+\.\d\d +\d+$/m)
    expect(output).toMatch(/^no order of asking can do with fewer than +\d+\.\d\d$/m)
    expect(output).toMatch(/^possible-toxin +\d+\.\d % +\d+\.\d\d +\d+ +\d+\.\d\d +\d+$/m)
    expect(output).toMatch(/asked first would settle|Asking `[a-z-]+` first would settle/)
  })
})

describe('counted answers take the place of even ones', () => {
  const counted = {
    'people-signs': { none: 99, unsure: 1 },
    'container-signs': { none: 100 },
    'surface-texture': { 'wet-film': 3, 'dry-fuzzy': 1 },
    'jar-ph': { '3.2@meter': 8, unsure: 2 },
    day: { 9: 10 },
    drinkers: { none: 95, 'someone-drank + at-risk-will-drink': 4, unsure: 1 }
  }

  test('a verdict whose answers nobody gave is not reached', async () => {
    const { code, output } = await figures('--json', '--shares', sharesFile(counted))
    const told = JSON.parse(output)
    expect(code).toBe(0)
    expect([...told.counted].sort()).toEqual(Object.keys(counted).sort())
    expect(told.neverAsked).toContain('side-light')
    const verdicts: string[] = told.byVerdict.map(({ verdict }: { verdict: string }) => verdict)
    expect(verdicts).toContain('likely-mold')
    expect(verdicts).not.toContain('emergency')
    expect(verdicts).not.toContain('pressure-hazard')
    expect(told.screens.mean).toBeGreaterThanOrEqual(told.settled.mean)
    expect(told.settled.mean).toBeGreaterThanOrEqual(told.bound.fewestScreens)
  })

  test('what cannot be meant is told, one sentence for each', async () => {
    const { code, output, errors } = await figures(
      '--shares',
      sharesFile({
        'jar-phh': { '3.2': 1 },
        day: { 9.5: 1, 9: -1 },
        'surface-texture': { 'wet-flim': 2 },
        'container-signs': { 'none + tight-lid': 1 },
        'jar-signs': { none: 0 },
        'looked-before': 7
      })
    )
    expect(code).toBe(2)
    expect(output).toBe('')
    expect(errors.trimEnd().split('\n').sort()).toEqual([
      '`container-signs`: `none` stands alone, not beside other signs.',
      '`day` counts whole days: give 9, not 9.5.',
      '`day`: the count of `9` must be a whole number, 0 or more.',
      '`jar-signs` has no answer that was ever given: leave it out.',
      '`kombucha-jar` does not ask `jar-phh`. Did you mean `jar-ph`?',
      '`looked-before` needs an object of answers and their counts.',
      '`surface-texture` has no answer `wet-flim`. Did you mean `wet-film`?'
    ])
  })

  test('a file that is no JSON, or is not there, is told as well', async () => {
    const broken = await figures('--shares', sharesFile('{ day'))
    expect(broken.code).toBe(2)
    expect(broken.errors).toContain('no JSON object')
    const missing = await figures('--shares', join(folder, 'none.json'))
    expect(missing.code).toBe(2)
    expect(missing.errors).toContain('cannot be read')
  })
})

describe('what the outcomes of a tree say is counted', () => {
  test('how many differ, how long they are, and that nobody gets more than eight steps', async () => {
    const { code, output } = await runCommand([
      'figures',
      'outside-this-tool',
      '--sheets',
      '--json'
    ])
    expect(code).toBe(0)
    const { walks, distinct, words, steps, usual } = JSON.parse(output)
    expect(walks).toBe(2000)
    expect(distinct).toBeGreaterThan(50)
    expect(words.longest).toBeGreaterThan(words.median)
    expect(steps.longest).toBeLessThanOrEqual(8)
    expect(usual).toBeGreaterThan(0)
    expect(usual).toBeLessThanOrEqual(1)
  })

  test('and in every tree five steps are enough for 95 outcomes of 100', async () => {
    const { loaded, office } = await openShipped()
    const today = new Date('2026-11-29')
    const usual = loaded.trees.map(tree => {
      const { texts, sources } = wordsOfTree(tree, loaded)
      const setting = { words: createWords(texts, SOURCE_TAG), sources, office, today }
      return [tree.id, sheetsOf(tree, {}, setting, { walks: 300, seed: 20_261_129 }).usual]
    })
    expect(usual.length).toBeGreaterThan(8)
    expect(usual.filter(([, share]) => Number(share) < 0.95)).toEqual([])
  })

  test('in a few lines for people', async () => {
    const { output } = await runCommand(['figures', 'outside-this-tool', '--sheets'])
    expect(output).toMatch(/^words: median, longest +\d+, \d+$/m)
    expect(output).toMatch(/^of those, with 5 steps at most +\d+\.\d %$/m)
  })
})
