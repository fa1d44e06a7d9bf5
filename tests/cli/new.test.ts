import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { walk } from '../../src/evaluate/walk.ts'
import { copyShipped } from '../helpers/copy-shipped.ts'
import { usualExcept } from '../helpers/usual.ts'
import { openOnce, runCommand } from './run-command.ts'

const own = mkdtempSync(join(tmpdir(), 'jarside-new-'))
const begin = (...args: readonly string[]) => runCommand(['new', ...args, '--in', own])

beforeAll(() => {
  copyShipped(own)
})
afterAll(() => rmSync(own, { recursive: true, force: true }))

describe('a ferment is begun', () => {
  test('as a folder that loads and is proved, and is told what is missing', async () => {
    const { code, output, errors } = await begin('ginger-bug')
    expect(errors).toBe('')
    expect(output).toContain('written: trees/ginger-bug/tree.yaml\n')
    expect(output).toContain('written: locales/es/ginger-bug.json\n')
    expect(output).toMatch(/^ginger-bug: rules-hold: \d+ proved$/m)
    expect(output).toContain('Still missing')
    expect(code).toBe(0)
    const tree = readFileSync(join(own, 'trees/ginger-bug/tree.yaml'), 'utf8')
    expect(tree).toContain('# Ginger bug.\nid: ginger-bug\n')
    expect(tree).toContain('due: 2027-11-01')
  })

  test('that throws out mold and is for a specialist otherwise', async () => {
    const { loaded } = await openOnce(own)
    const tree = loaded.trees.find(({ id }) => id === 'ginger-bug')
    if (tree === undefined) throw new Error('it does not load')
    for (const { title, told, expect: wanted } of loaded.rows['ginger-bug'] ?? []) {
      const { outcome } = walk(tree, usualExcept(tree, told))
      expect([title, outcome]).toMatchObject([title, wanted])
    }
    const { outcome } = walk(tree, usualExcept(tree, {}))
    expect([outcome.batch, outcome.use]).toEqual(['ask-specialist', 'not-yet'])
  })

  test('with a title as people write it', async () => {
    const { code, output, errors } = await begin(
      'tepache',
      '--title',
      'Grandma “T” "fizz" \\ tepache'
    )
    // Written as it was given; that another language still has it in English is reported at once.
    expect([code, errors]).toEqual([1, ''])
    expect(output).toContain('locales/es/tepache.json:3:3  left-in-english')
    const { loaded } = await openOnce(own)
    expect(JSON.stringify(loaded.words.es)).toContain(
      JSON.stringify('Grandma “T” "fizz" \\ tepache')
    )
  })

  test('once: what is there is left as it is', async () => {
    const { code, errors } = await begin('ginger-bug')
    expect(code).toBe(2)
    expect(errors).toBe('`trees/ginger-bug` is there already.\n')
  })

  test.each([
    [['Ginger Bug'], /is no name/],
    [[], /Name one ferment/],
    [['one', 'two'], /Name one ferment/],
    [['editions'], /take another name/],
    [['one', '--title', 'One\nand two'], /A title is one line/]
  ])('under a name: %j', async (args, words) => {
    const { code, errors } = await begin(...args)
    expect(code).toBe(2)
    expect(errors).toMatch(words)
    expect(existsSync(join(own, 'trees/one'))).toBe(false)
  })
})
