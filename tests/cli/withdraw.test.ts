import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { pack } from '../../src/bundle/browser-bundle.ts'
import { embedTrees } from '../../src/bundle/embed-bundle.ts'
import { copyShipped } from '../helpers/copy-shipped.ts'
import { openOnce, runCommand } from './run-command.ts'

const own = mkdtempSync(join(tmpdir(), 'jarside-withdrawn-'))
const here = (...args: readonly string[]) => runCommand([...args, '--in', own])

beforeAll(async () => {
  copyShipped(own)
  const why = ['--because', 'the limit at day seven is wrong']
  expect(await here('withdraw', 'kombucha-jar', ...why)).toEqual({
    code: 0,
    errors: '',
    output:
      'kombucha-jar is withdrawn up to edition 1 (trees/withdrawn.json). Build and put it up now.\n' +
      'It ends with `edition: 2` in trees/kombucha-jar/tree.yaml.\n'
  })
})
afterAll(() => rmSync(own, { recursive: true, force: true }))

describe('a withdrawn tree', () => {
  test('is walked by nobody, who gets the reason and the numbers instead', async () => {
    const { code, output, errors } = await here('walk', 'kombucha-jar', '--given', 'day=9')
    expect({ code, output }).toEqual({ code: 1, output: '' })
    expect(errors).toContain('was withdrawn on 2026-11-25: the limit at day seven is wrong')
    expect(errors).toContain('1-800-222-1222')
  })

  test('is printed on no sheet', async () => {
    const { code, output } = await here(
      'handout',
      'kombucha-jar',
      '--all',
      '--out',
      join(own, 'sheets')
    )
    expect({ code, output }).toEqual({ code: 1, output: '' })
  })

  test('gives nothing of itself to the pages, the kiosk or the embed', async () => {
    const bundle = pack((await openOnce(own)).loaded, own)
    const standing = bundle.catalogue.trees.filter(({ withdrawn }) => withdrawn === null)
    const gone = bundle.catalogue.trees.filter(({ withdrawn }) => withdrawn !== null)
    expect(gone.map(({ id, withdrawn }) => [id, withdrawn])).toEqual([
      ['kombucha-jar', '2026-11-25']
    ])
    // The others stand as before.
    const others = standing.map(({ id }) => id).sort()
    expect(others.length).toBeGreaterThan(0)
    for (const part of [bundle.trees, bundle.words, bundle.drawings, bundle.said]) {
      expect(Object.keys(part).sort()).toEqual(others)
    }
    expect(Object.keys(embedTrees(bundle)).sort()).toEqual(others)
    // The reason is for those who fix it: no file that is given out holds it.
    expect(JSON.stringify(bundle)).not.toContain('day seven is wrong')
  })

  test('stands again with a newer edition, and with no older one', async () => {
    const tree = join(own, 'trees/kombucha-jar/tree.yaml')
    const text = readFileSync(tree, 'utf8')
    writeFileSync(tree, text.replace(/^edition: 1$/m, 'edition: 2'))
    try {
      expect((await here('walk', 'kombucha-jar', '--given', 'day=9')).code).toBe(0)
      // What is given out is what is not withdrawn any more.
      expect((await openOnce(own)).loaded.withdrawn).toEqual({})
    } finally {
      writeFileSync(tree, text)
    }
    expect((await here('walk', 'kombucha-jar', '--given', 'day=9')).code).toBe(1)
  })

  test('is not withdrawn without a reason', async () => {
    const { code, errors } = await here('withdraw', 'kombucha-jar')
    expect({ code, errors }).toEqual({
      code: 2,
      errors: 'Say why, for those who fix it: `--because <why>`.\n'
    })
  })
})
