import { createHash } from 'node:crypto'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { chosenOf, inOneFile } from '../../src/cli/single-file.ts'
import { runCommand } from './run-command.ts'

const folder = mkdtempSync(join(tmpdir(), 'jarside-pack-'))
afterAll(() => rmSync(folder, { recursive: true }))
const pack = (...args: readonly string[]) => runCommand(['pack', ...args])
const ONE = ['--single-file', '--out', join(folder, 'kiosk.html')]

const WHOLE = {
  catalogue: {
    trees: [{ id: 'jar' }, { id: 'crock' }],
    languages: [{ tag: 'en' }, { tag: 'es' }, { tag: 'zh' }],
    texts: { ui: { choose: 'Which?' } }
  },
  trees: { jar: 1, crock: 2 },
  drawings: { jar: 3, crock: 4 },
  words: { jar: { es: 5, zh: 6 }, crock: { es: 7 } },
  screens: { en: 8, es: 9, zh: 10 },
  kiosk: { en: 11, es: 12, zh: 13 }
}
const face = (file: string) => `@font-face{src:url(./${file}.woff2)format("woff2")}`
const BUILT: Readonly<Record<string, string>> = {
  'style.css': `p{color:red}${face('literata')}${face('noto-sans-sc-bold')}`,
  'program.js': 'const text = "</script><!--"',
  'page.html': '<meta content="%POLICY%"><style>%STYLE%</style>%DATA%<script>%PROGRAM%</script>',
  'literata.woff2': 'letters'
}
const read = (name: string) => {
  const text = BUILT[name]
  if (text === undefined) throw new Error(`${name} is asked for`)
  return Buffer.from(text)
}
const chosen = { trees: ['jar'], tags: ['en', 'es'] }
const file = inOneFile({
  whole: chosenOf(WHOLE, chosen),
  chosen,
  office: '{"name":"</script>"}',
  packedOn: '2026-11-30',
  licenses: 'Some license <mail@larkspur.example>',
  read
})

describe('the kiosk in one file', () => {
  test('holds what was chosen and nothing else', () => {
    expect(chosenOf(WHOLE, chosen)).toEqual({
      catalogue: {
        trees: [{ id: 'jar' }],
        languages: [{ tag: 'en' }, { tag: 'es' }],
        texts: WHOLE.catalogue.texts
      },
      trees: { jar: 1 },
      drawings: { jar: 3 },
      words: { jar: { es: 5 } },
      screens: { en: 8, es: 9 },
      kiosk: { en: 11, es: 12 }
    })
  })

  test('has its typefaces inside, without those of languages that are not there', () => {
    expect(file).toContain(`data:font/woff2;base64,${btoa('letters')}`)
    expect(file).not.toContain('.woff2)')
  })

  test('lets nothing run but its own program, and that whole', () => {
    const [, program = ''] = /<script>(.*)<\/script>/s.exec(file) ?? []
    expect(program).toBe('const text = "<\\/script><\\!--"')
    const digest = createHash('sha256').update(program).digest('base64')
    expect(file).toContain(`default-src 'none'; script-src 'sha256-${digest}'`)
    // Five scripts begin, and as many end: no text of an office ends one.
    expect(file.match(/<script\b/g)).toHaveLength(5)
    expect(file.match(/<\/script>/g)).toHaveLength(5)
  })
})

describe('jarside pack', () => {
  test('says what does not fit', async () => {
    const ran = [
      await pack('--out', 'x.html'),
      await pack('--single-file'),
      await pack(...ONE, '--tree', 'kombucha'),
      await pack(...ONE, '--lang', 'xx'),
      await pack(...ONE, 'kombucha-jar')
    ]
    expect(ran.map(({ code }) => code)).toEqual([2, 2, 2, 2, 2])
    const said = ['--single-file', '--out', 'no tree `kombucha`', 'no words in `xx`', '--tree']
    for (const [at, text] of said.entries()) expect(ran[at]?.errors).toContain(text)
  })

  test('writes nothing without a build, nor from one of other trees', async () => {
    const built = join(folder, 'dist')
    const none = await pack(...ONE, '--built', built)
    expect(none).toMatchObject({ code: 1, output: '' })
    expect(none.errors).toContain('npm run build')
    mkdirSync(join(built, 'single-file'), { recursive: true })
    writeFileSync(
      join(built, 'single-file/trees.json'),
      JSON.stringify({ catalogue: { trees: [{ id: 'kombucha-jar', fingerprint: 'old' }] } })
    )
    const other = await pack(...ONE, '--built', built, '--tree', 'kombucha-jar')
    expect(other.code).toBe(1)
    expect(other.errors).toContain('`kombucha-jar` as it was before')
  })
})
