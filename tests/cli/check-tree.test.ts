import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { checkedTree } from '../../src/cli/checked-tree.ts'
import { prove } from '../../src/prove/prove.ts'
import { proveKnowHow } from '../../src/prove/prove-know-how.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { wholeProject } from '../load/project-files.ts'
import { runCommand } from './run-command.ts'

describe('one tree alone is checked', () => {
  test('everything of it is proved, as ever', async () => {
    const { trees, places, sources, knowHow } = await loadShipped()
    const [jar] = trees
    if (jar?.id !== 'kombucha-jar') throw new Error('the jar is not there')
    const answers = proveKnowHow(jar, knowHow.allowed[jar.id], knowHow.places)
    expect.assert(answers !== null)
    const { findings: found, ...expected } = checkedTree(jar.id, [
      ...prove(jar, places[jar.id], sources),
      answers
    ])
    const { code, output } = await runCommand(['check', '--tree', jar.id, '--json'])
    expect(JSON.parse(output)).toEqual({ ok: true, findings: found, trees: [expected] })
    expect(code).toBe(0)
  })

  test('as text every line is about it', async () => {
    const { output } = await runCommand(['check', '--tree', 'kombucha-jar'])
    const lines = output.trimEnd().split('\n')
    expect(lines.at(-1)).toMatch(/^No findings\. Everything of `kombucha-jar` is proved/)
    for (const line of lines.slice(0, -1)) expect(line).toMatch(/^kombucha-jar: /)
  })

  test('a tree that nobody wrote is bad use', async () => {
    const { code, output, errors } = await runCommand(['check', '--tree', 'kombucha-jr'])
    expect([code, output]).toEqual([2, ''])
    expect(errors).toContain('Did you mean `kombucha-jar`?')
  })
})

describe('what loading finds anywhere is told beside it', () => {
  const folder = mkdtempSync(join(tmpdir(), 'jarside-'))
  beforeAll(() => {
    for (const { path, text } of [
      ...wholeProject(),
      { path: 'trees/other/tree.yaml', text: 'id: other\n' }
    ]) {
      mkdirSync(dirname(join(folder, path)), { recursive: true })
      writeFileSync(join(folder, path), text)
    }
  })
  afterAll(() => rmSync(folder, { recursive: true }))

  test.each([
    ['jar', 1],
    ['other', 0]
  ])('with --tree %s', async (tree, proved) => {
    const { code, output } = await runCommand(['check', '--tree', tree, '--in', folder, '--json'])
    const { ok, findings, trees } = JSON.parse(output)
    expect([code, ok]).toEqual([1, false])
    expect(findings[0].place.file).toBe('trees/other/tree.yaml')
    expect(trees).toHaveLength(proved)
  })
})
