import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { checkedLines, checkedTree } from '../../src/cli/checked-tree.ts'
import { runCommand } from './run-command.ts'

describe('the shipped project is checked whole', () => {
  test('it has no findings and everything is proved', async () => {
    const { code, output } = await runCommand(['check', '--json'])
    const { ok, findings, trees } = JSON.parse(output)

    expect(findings).toEqual([])
    expect(ok).toBe(true)
    expect(trees.map(({ tree }: { tree: string }) => tree)).toContain('kombucha-jar')
    expect(code).toBe(0)
  })

  test('as text there is a line for each kind of property', async () => {
    const { output } = await runCommand(['check'])
    expect(output).toMatch(/^kombucha-jar: rules: [1-9]\d* proved$/m)
    expect(output).toMatch(/No findings\. Everything is proved\.\n$/)
  })
})

describe('a project with a fault fails the check', () => {
  const folder = mkdtempSync(join(tmpdir(), 'jarside-'))
  beforeAll(() => {
    for (const part of ['shared', 'trees', 'locales', 'public']) {
      cpSync(part, join(folder, part), { recursive: true })
    }
    const tree = join(folder, 'trees/kombucha-jar.yaml')
    const faulty = readFileSync(tree, 'utf8').replace('then: container', 'then: contaner')
    writeFileSync(tree, faulty)
  })
  afterAll(() => rmSync(folder, { recursive: true }))

  test('the finding is printed with its place and its remedy', async () => {
    const { code, output } = await runCommand(['check', '--in', folder])
    expect(code).toBe(1)
    expect(output).toMatch(/^trees\/kombucha-jar\.yaml:\d+:\d+ {2}[a-z-]+$/m)
    expect(output).toContain('Fix:')
    expect(output).toContain('`container`')
  })

  test('the tree cannot be walked, and its findings say why', async () => {
    const { code, output, errors } = await runCommand(['walk', 'kombucha-jar', '--in', folder])
    expect([code, output]).toEqual([1, ''])
    expect(errors).toContain('Fix:')
  })

  test('the list leaves it out and says so', async () => {
    const { code, errors } = await runCommand(['list', '--in', folder])
    expect(code).toBe(1)
    expect(errors).toContain('jarside check')
  })
})

describe('only proved is proved', () => {
  const proved = { property: 'a', kind: 'rule', standing: 'proved', findings: [] } as const
  const open = { ...proved, standing: 'not-decided', because: 'too many' } as const

  test('a property that is not decided is counted apart, with its reason', () => {
    const checked = checkedTree('jar', [proved, open])
    expect(checked.proved).toBe(false)
    expect(checkedLines(checked)).toEqual(['jar: rules: 1 proved, 1 not decided (too many)'])
  })

  test('a tree of which nothing was proved is not proved', () => {
    expect(checkedTree('jar', []).proved).toBe(false)
  })
})
