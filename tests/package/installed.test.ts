import {
  existsSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  realpathSync,
  writeFileSync
} from 'node:fs'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { browserProgram } from '../../src/cli/browser.ts'
import { paperStyle } from '../../src/cli/paper-style.ts'
import type { AuthoredFile } from '../../src/load/load.ts'
import { runCommand } from '../cli/run-command.ts'
import { faultyProject, wholeProject } from '../load/project-files.ts'
import { type Installed, installed } from './installed.ts'

// The installed command has no day but its own.
const today = new Date().toISOString()

describe('the command works where it is installed', () => {
  let jarside: Installed
  // It builds, packs and installs: that may take its time on a busy machine.
  beforeAll(() => {
    jarside = installed()
  })
  afterAll(() => jarside?.remove())

  const write = (folder: string, files: readonly AuthoredFile[]) => {
    const at = join(jarside.folder, folder)
    for (const { path, text } of files) {
      mkdirSync(dirname(join(at, path)), { recursive: true })
      writeFileSync(join(at, path), text)
    }
    return at
  }

  test('it runs from the empty folder, with nothing of this checkout', () => {
    const packages = join(jarside.folder, 'home/node_modules')
    const own = join(realpathSync(packages), 'jarside/lib/cli/jarside.js')
    expect(realpathSync(jarside.program)).toBe(own)
    const links = readdirSync(packages).filter(name =>
      lstatSync(join(packages, name)).isSymbolicLink()
    )
    expect(links).toEqual([])
    expect(existsSync(join(packages, 'tsx'))).toBe(false)
  })

  test('it holds what the command needs, and nothing that is for development', () => {
    const folders = [...new Set(jarside.holds.map(path => path.split('/')[0]))].sort()
    expect(folders).toEqual([
      ...['LICENSE', 'README.md', 'docs', 'lib', 'locales', 'package.json', 'public', 'shared'],
      'trees'
    ])
    const only = (folder: string) => jarside.holds.filter(path => path.startsWith(`${folder}/`))
    expect(only('public')).toEqual(['public/office.json'])
    expect(only('docs')).toEqual(['docs/authoring-in-your-editor.md'])
    expect(jarside.holds.filter(path => /\.tsx?$/.test(path))).toEqual([])
    expect(jarside.holds).toEqual(
      expect.arrayContaining([
        'shared/schemas/tree.schema.json',
        'shared/pieces/people.yaml',
        'lib/style/fonts/OFL-literata.txt',
        'trees/kombucha-jar/tree.yaml'
      ])
    )
  })

  test('it says its version', () => {
    const { version } = JSON.parse(readFileSync('package.json', 'utf8'))
    expect(jarside.run('--version')).toEqual({ code: 0, output: `${version}\n`, errors: '' })
  })

  test('it lists the trees that it ships and checks one of them, as the source does', async () => {
    for (const line of [['list'], ['check', '--tree', 'sourdough-starter']]) {
      const { output, ...rest } = jarside.run(...line)
      expect(output).toContain('sourdough-starter')
      expect({ output, ...rest }).toEqual(await runCommand(line, { today }))
    }
  })

  test('it walks a tree that it ships', () => {
    const { output, errors } = jarside.run(
      ...['walk', 'kombucha-jar', '--json', '--given', 'surface-texture=dry-fuzzy']
    )
    expect(JSON.parse(output)).toMatchObject({ atLeast: { batch: 'likely-mold', use: 'never' } })
    expect(errors).toBe('')
  })

  test('it checks a folder of somebody’s own, and says what is wrong there', async () => {
    const own = ['check', '--in', write('own', wholeProject())]
    expect(jarside.run(...own).output).toMatch(/^jar: .* proved/m)
    expect(jarside.run(...own)).toEqual(await runCommand(own, { today }))
    const bad = faultyProject('unknown-key').files
    const { code, output } = jarside.run('check', '--in', write('bad', bad))
    expect(code).toBe(1)
    expect(output).toMatch(/^trees\/jar\/tree\.yaml:\d+:\d+ {2}unknown-key$/m)
  })

  test('what it loaded it keeps in the cache of the user, and says the same from there', () => {
    const kept = () => readdirSync(join(jarside.folder, 'users-cache/jarside/loaded')).length
    const first = jarside.run('list')
    const before = kept()
    expect(before).toBeGreaterThan(0)
    expect(jarside.run('list')).toEqual(first)
    expect(kept()).toBe(before)
  })

  test('it puts the schemas beside a tree of somebody’s own', () => {
    const out = join(jarside.folder, 'mine/shared/schemas')
    expect(jarside.run('schema', '--out', out).code).toBe(0)
    expect(readFileSync(join(out, 'tree.schema.json'), 'utf8')).toBe(
      readFileSync('shared/schemas/tree.schema.json', 'utf8')
    )
  })

  test.skipIf(browserProgram() === undefined)('it prints a sheet in its own typefaces', () => {
    const out = join(jarside.folder, 'sheets')
    const print = () =>
      jarside.run(
        ...['handout', 'kombucha-jar', '--verdict', 'likely-mold', '--lang', 'es', '--out', out]
      )
    // What only printing needs is installed by whoever prints.
    expect(print()).toEqual({
      code: 2,
      output: '',
      errors: 'Printing needs playwright-core: `npm install playwright-core`.\n'
    })
    jarside.add('playwright-core')
    const { code, errors } = print()
    expect([code, errors]).toEqual([0, ''])
    const sheet = 'kombucha-jar-likely-mold-es-letter'
    expect(readFileSync(join(out, `${sheet}.html`), 'utf8')).toContain(paperStyle('es'))
    expect(
      readFileSync(join(out, `${sheet}.pdf`))
        .subarray(0, 5)
        .toString()
    ).toBe('%PDF-')
  })
})
