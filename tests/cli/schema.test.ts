import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { runCommand } from './run-command.ts'

describe('jarside schema puts the schemas where an author wants them', () => {
  let folder = ''
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'jarside-'))
  })
  afterEach(() => rmSync(folder, { recursive: true }))

  test('a folder that is not there yet gets every schema, as shipped', async () => {
    const out = join(folder, 'mine', 'schemas')
    const { code, output, errors } = await runCommand(['schema', '--out', out])
    expect([code, errors]).toEqual([0, ''])
    expect(output).toContain('tree.schema.json                for trees/<id>/tree.yaml\n')
    const filesIn = (at: string) =>
      Object.fromEntries(readdirSync(at).map(name => [name, readFileSync(join(at, name), 'utf8')]))
    expect(filesIn(out)).toEqual(filesIn('shared/schemas'))
  })

  test('a file in place of a folder stays as it is', async () => {
    const out = join(folder, 'notes.txt')
    writeFileSync(out, 'mine')
    const { code, errors } = await runCommand(['schema', '--out', out])
    expect([code, errors]).toEqual([2, `\`${out}\` is a file. Name a folder.\n`])
    expect(readFileSync(out, 'utf8')).toBe('mine')
  })

  test('a name is refused: every schema is written', async () => {
    const { code, errors } = await runCommand(['schema', 'tree', '--out', folder])
    expect([code, errors]).toEqual([
      2,
      '`jarside schema` takes no names: it writes every schema.\n'
    ])
    expect(readdirSync(folder)).toEqual([])
  })
})
