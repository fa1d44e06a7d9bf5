import { describe, expect, test } from 'vitest'
import { load } from '../../src/load/load.ts'
import { codesOf, projectWith, wholeProject } from './project-files.ts'

const hostile: readonly [string, string, string][] = [
  ['too large', `id: jar\n# ${'x'.repeat(600 * 1024)}`, 'file-too-large'],
  ['of nothing but commas', `[${','.repeat(500_000)}`, 'file-too-large'],
  ['of nothing but line ends', '\n'.repeat(500_000), 'file-too-large'],
  ['of open brackets', '['.repeat(500_000), 'nested-too-deeply'],
  ['of open braces', '{a: '.repeat(100_000), 'nested-too-deeply'],
  ['of hyphens', '- '.repeat(250_000), 'nested-too-deeply'],
  ['of question marks', '? '.repeat(200_000), 'nested-too-deeply'],
  ['of a billion laughs', 'a: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\n', 'alias-used'],
  ['that holds itself', 'a: &a [*a]\n', 'alias-used'],
  ['that reaches for the prototype', '__proto__: { polluted: yes }\n', 'forbidden-key'],
  ['that reaches for the constructor', 'constructor: { prototype: {} }\n', 'forbidden-key'],
  ['with one key twice', 'id: jar\nid: jar\n', 'duplicate-key'],
  ['with a key twice in JSON', '{ "id": "jar", "id": "jar" }', 'duplicate-key'],
  ['with a kind of its own', 'id: !!js/function "x"\n', 'syntax-error'],
  ['of two documents', 'id: jar\n---\nid: jar\n', 'syntax-error'],
  ['of nothing', '', 'wrong-kind'],
  ['of one word', 'jar', 'wrong-kind']
]

describe('a hostile file is refused with a finding, not a crash', () => {
  test.each(hostile)('a file %s', async (_, text, code) => {
    const { findings, trees } = await load(projectWith(`# file: trees/jar/tree.yaml\n${text}`))
    expect(findings.map(finding => finding.code)).toContain(code)
    expect(trees).toEqual([])
  })

  test('a prototype is not changed by loading', async () => {
    await load(projectWith('# file: trees/jar/tree.yaml\n__proto__: { polluted: yes }\n'))
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false)
  })

  test('names that every object has are unknown names', async () => {
    const files = wholeProject().map(file => ({
      ...file,
      text: file.text.replace('raise: wait, to: side', 'raise: constructor, to: valueof')
    }))
    expect(await codesOf(files)).toEqual(['unknown-verdict', 'unknown-question'])
  })

  test('a file that climbs out of the project is not read', async () => {
    const files = [...wholeProject(), { path: '../trees/x/tree.yaml', text: 'id: x' }]
    expect(await codesOf(files)).toEqual(['unknown-file'])
  })

  test('Windows line ends and a byte order mark are read like any other', async () => {
    const files = wholeProject().map(({ path, text }) => ({
      path,
      text: `\ufeff${text.replaceAll('\n', '\r\n')}`
    }))
    const { trees, findings } = await load(files)
    expect(findings).toEqual([])
    expect(trees[0]?.fingerprint).toBe((await load(wholeProject())).trees[0]?.fingerprint)
  })

  test('thousands of faults in one file are told in bounds', async () => {
    const keys = Array.from({ length: 10_000 }, (_, i) => `wrong${i}: 1\n`).join('')
    const codes = await codesOf(projectWith(`# file: trees/jar/tree.yaml\n${keys}`))
    expect(codes).toContain('too-many-findings')
    expect(codes.length).toBeLessThanOrEqual(51)
  })
})
