import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { runCommand } from './run-command.ts'

describe('jarside plain writes pages that need no script', () => {
  test('one tree in one language, with the choice of a language and of a tree', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'jarside-plain-'))
    try {
      const { code, output, errors } = await runCommand([
        ...['plain', 'outside-this-tool', '--lang', 'es', '--out', folder]
      ])
      expect({ code, errors }).toEqual({ code: 0, errors: '' })
      expect(output).toMatch(/es\/outside-this-tool {2}\d+ files/)
      const start = readFileSync(join(folder, 'es/outside-this-tool/index.html'), 'utf8')
      expect(start).toContain('<html lang="es" dir="ltr">')
      expect(start).toContain('Empezar')
      expect(readFileSync(join(folder, 'index.html'), 'utf8')).toContain('href="es/index.html"')
      expect(readFileSync(join(folder, 'plain.css'), 'utf8')).toContain(
        'prefers-color-scheme: dark'
      )
    } finally {
      rmSync(folder, { recursive: true })
    }
  })

  test('what does not fit is said', async () => {
    const both = await runCommand(['plain', 'kombucha-jar', '--all', '--out', 'x'])
    expect(both.errors).toContain('not both')
    const nowhere = await runCommand(['plain', 'kombucha-jar'])
    expect(nowhere.errors).toContain('--out <folder>')
    const strange = await runCommand(['plain', 'kombucha-jar', '--lang', 'xx', '--out', 'x'])
    expect(strange.errors).toContain('no words in `xx`')
    expect([both.code, nowhere.code, strange.code]).toEqual([2, 2, 2])
  })
})
