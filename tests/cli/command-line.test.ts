import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { wholeProject } from '../load/project-files.ts'
import { type Checkout, checkout } from './checkout.ts'
import { runCommand } from './run-command.ts'

let own: Checkout
/** A project that is loaded in no time. */
let small: string
beforeAll(() => {
  own = checkout()
  small = join(own.folder, 'small')
  for (const { path, text } of wholeProject()) {
    mkdirSync(dirname(join(small, path)), { recursive: true })
    writeFileSync(join(small, path), text)
  }
})
afterAll(() => own?.remove())

const kept = (kind: string) =>
  readdirSync(join(own.folder, 'node_modules/.cache/jarside', kind)).sort()
const change = (path: string, passage: string, by: string) => {
  const file = join(own.folder, path)
  const text = readFileSync(file, 'utf8')
  expect(text).toContain(passage)
  writeFileSync(file, text.replace(passage, by))
}

const list = () => own.run('list', '--in', small)

describe('the command works as a process of its own', () => {
  test('two at once, with nothing kept from before, say what one says that keeps nothing', async () => {
    const expected = await runCommand(['list', '--in', small])
    expect(await Promise.all([list(), list()])).toEqual([expected, expected])
    expect(kept('command')).toHaveLength(1)
    expect(kept('loaded')).toHaveLength(1)
    expect(await list()).toEqual(expected)
  })

  test('it prints one object, nothing else, and passes its exit code through', async () => {
    const { code, output, errors } = await own.run(
      ...['walk', 'kombucha-jar', '--json', '--strict', '--given', 'surface-texture=dry-fuzzy']
    )
    expect(JSON.parse(output)).toMatchObject({
      finished: false,
      atLeast: { batch: 'likely-mold', use: 'never' }
    })
    expect(errors).toBe('')
    expect(code).toBe(1)
  })

  test('bad use goes to the error stream and ends with 2', async () => {
    const { code, output, errors } = await own.run('walk', 'kombucha-jar', '--given', 'dey=9')
    expect([code, output]).toEqual([2, ''])
    expect(errors).toContain('`day`')
  })
})

describe('nothing kept outlives what it was made of', () => {
  test('a change of a tree is in the next answer, and gone with it', async () => {
    const before = await list()
    change('small/trees/jar/tree.yaml', 'questions:', 'questoins:')
    expect((await list()).errors).toContain('jarside check')
    change('small/trees/jar/tree.yaml', 'questoins:', 'questions:')
    expect(await list()).toEqual(before)
  })

  test('a change of the source is in the next command, and gone with it', async () => {
    const before = await own.run('list', '--help')
    change('src/cli/list.ts', 'show every tree', 'show each tree')
    expect((await own.run('list', '--help')).output).toContain('show each tree')
    change('src/cli/list.ts', 'show each tree', 'show every tree')
    expect(await own.run('list', '--help')).toEqual(before)
  })

  test('a source that cannot be built is run, and says itself what is wrong', async () => {
    change('src/cli/list.ts', 'export const list', 'export const list list')
    const { code, errors } = await list()
    expect(code).not.toBe(0)
    expect(errors).toContain('list.ts')
    change('src/cli/list.ts', 'export const list list', 'export const list')
  })

  test('an entry that was damaged is loaded anew', async () => {
    const before = await list()
    const folder = join(own.folder, 'node_modules/.cache/jarside/loaded')
    for (const name of kept('loaded')) writeFileSync(join(folder, name), 'damaged')
    expect(await list()).toEqual(before)
  })

  test('where nothing can be kept the source is run itself', async () => {
    const before = await list()
    rmSync(join(own.folder, 'node_modules/.cache'), { recursive: true })
    writeFileSync(join(own.folder, 'node_modules/.cache'), '')
    expect(await list()).toEqual(before)
  })
})
