import { type SpawnSyncReturns, spawn, spawnSync } from 'node:child_process'
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync
} from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterAll, describe, expect, test } from 'vitest'
import { BadUse } from '../../src/cli/bad-use.ts'
import { faultText } from '../../src/cli/fault-text.ts'
import { makeFolder, oneAtATime, writeWhole } from '../../src/cli/write-file.ts'
import { readEdition } from '../../src/load/edition.ts'
import { wholeProject } from '../load/project-files.ts'
import { runCommand } from './run-command.ts'

const root = join(import.meta.dirname, '../..')
const scratch = mkdtempSync(join(tmpdir(), 'jarside-faults-'))
afterAll(() => rmSync(scratch, { recursive: true, force: true }), 60_000)

/** A small project, in which nothing is published. */
function newProject(): string {
  const own = mkdtempSync(join(scratch, 'project-'))
  for (const { path, text } of wholeProject()) {
    mkdirSync(dirname(join(own, path)), { recursive: true })
    writeFileSync(join(own, path), text)
  }
  return own
}

/** A copy of this one, of several trees. */
function shippedProject(): string {
  const own = mkdtempSync(join(scratch, 'project-'))
  for (const folder of ['trees', 'shared', 'locales', 'public']) {
    cpSync(join(root, folder), join(own, folder), { recursive: true })
  }
  return own
}
const editionsOf = (project: string) => join(project, 'trees/editions')

/** The real command in a process of its own, as a shell runs it. */
const tsx = pathToFileURL(join(root, 'node_modules/tsx/dist/loader.mjs')).href
const JARSIDE = ['--import', tsx, join(root, 'src/cli/main.ts')]
const env = { ...process.env, TSX_TSCONFIG_PATH: join(root, 'tsconfig.json') }
const quote = (arg: string) => `'${arg.replaceAll("'", "'\\''")}'`
const command = (...args: readonly string[]) =>
  [process.execPath, ...JARSIDE, ...args].map(quote).join(' ')
const shell = (line: string): SpawnSyncReturns<string> =>
  spawnSync('bash', ['-c', line], { encoding: 'utf8', env, cwd: scratch })

function expectSentence({ status, stderr }: SpawnSyncReturns<string>, words: RegExp) {
  expect(stderr).toMatch(words)
  expect(stderr).not.toMatch(/\n\s+at |Error:/)
  expect(stderr.trim().split('\n')).toHaveLength(1)
  expect(status).toBe(2)
}

const TREE = 'jar'
const EDITION = `${TREE}@1.json`

describe('an edition is published whole or not at all', () => {
  test('two at once: one writes it, the other finds it there just so', async () => {
    const own = newProject()
    const run = () =>
      new Promise<{ code: number | null; text: string }>(done => {
        const child = spawn(process.execPath, [...JARSIDE, 'publish', TREE, '--in', own], {
          env,
          stdio: ['ignore', 'pipe', 'pipe']
        })
        let text = ''
        child.stdout.on('data', part => {
          text += part
        })
        child.stderr.on('data', part => {
          text += part
        })
        child.on('close', code => done({ code, text }))
      })
    const [first, second] = await Promise.all([run(), run()])
    expect([first.code, second.code]).toEqual([0, 0])
    const said = [first.text, second.text].sort()
    expect(said.filter(text => text.includes('published already, just so'))).toHaveLength(1)
    expect(said.filter(text => text.includes('edition 1, draft, meaning'))).toHaveLength(1)
    expect(readdirSync(editionsOf(own))).toEqual([EDITION])
    expect(readEdition(readFileSync(join(editionsOf(own), EDITION), 'utf8'))?.tree.id).toBe(TREE)
    expect(existsSync(join(own, 'trees/.being-written'))).toBe(false)
  })

  test('on a disk that takes no more nothing of it is left, and it can be published later', () => {
    const own = newProject()
    // Of kilobytes one: an edition is larger.
    const full = shell(`ulimit -f 1; ${command('publish', TREE, '--in', own)}`)
    expectSentence(full, /larger than is allowed here \(EFBIG\)/)
    expect(readdirSync(editionsOf(own))).toEqual([])
    expect(existsSync(join(own, 'trees/.being-written'))).toBe(false)
    expect(shell(command('publish', TREE, '--in', own)).status).toBe(0)
  })
})

describe('a tree is withdrawn whole or not at all', () => {
  const because = ['--because', 'under review'] as const

  test('two at once are both withdrawn', async () => {
    const own = shippedProject()
    const ran = await Promise.all(
      ['vinegar-mother', 'sourdough-starter'].map(id =>
        runCommand(['withdraw', id, ...because, '--in', own])
      )
    )
    expect(ran.map(({ code }) => code)).toEqual([0, 0])
    const text = readFileSync(join(own, 'trees/withdrawn.json'), 'utf8')
    expect(Object.keys(JSON.parse(text)).sort()).toEqual(['sourdough-starter', 'vinegar-mother'])
  })

  test('and whoever fails at it lets the next one in', async () => {
    const own = mkdtempSync(join(scratch, 'bare-'))
    mkdirSync(join(own, 'trees'))
    const file = join(own, 'trees/withdrawn.json')
    await expect(
      oneAtATime(own, () => {
        writeWhole(file, '{}\n')
        throw new BadUse('no room')
      })
    ).rejects.toThrow('no room')
    expect(await oneAtATime(own, () => readFileSync(file, 'utf8'))).toBe('{}\n')
  })
})

describe('a file is written whole', () => {
  test('or what stood there before stays, and nothing beside it', () => {
    const folder = mkdtempSync(join(scratch, 'some-'))
    const file = join(folder, 'file')
    writeWhole(file, 'before')
    expect(() => writeWhole(join(folder, 'no/where'), 'x')).toThrow(/ENOENT/)
    expect(() => writeWhole(file, Symbol('no text') as unknown as string)).toThrow()
    expect(readFileSync(file, 'utf8')).toBe('before')
    expect(readdirSync(folder)).toEqual(['file'])
  })
})

describe('a folder that cannot be made', () => {
  test.each(['/proc/jarside/out', '/dev/null/out', 'package.json/out'])(
    '%s is said to be none at once',
    folder => {
      expect(() => makeFolder(folder)).toThrow(/ENOENT|ENOTDIR|EACCES/)
    }
  )

  test('is no matter where it is there already, or only some of it', () => {
    const folder = join(scratch, 'a/b/c')
    makeFolder(folder)
    makeFolder(folder)
    expect(existsSync(folder)).toBe(true)
  })
})

describe('every fault is one sentence, and ends with 2', () => {
  test.each([
    ['a file where a folder is wanted', ['--out', join(root, 'README.md')], /is no folder/],
    ['a folder under nothing', ['--out', '/proc/jarside/out'], /there is no such file or folder/]
  ])('%s', async (_, args, words) => {
    const { code, errors } = await runCommand([
      'table',
      'vinegar-mother',
      '--format',
      'csv',
      ...args
    ])
    expect(errors).toMatch(words)
    expect(errors.trim().split('\n')).toHaveLength(1)
    expect(code).toBe(2)
  })

  test('the office pack is a folder', async () => {
    const own = newProject()
    const file = join(own, 'public/office.json')
    rmSync(file)
    mkdirSync(file)
    const { code, errors } = await runCommand(['list', '--in', own])
    expect(errors).toMatch(/office\.json` is no file, and one is wanted there\.$/m)
    expect(code).toBe(2)
  })

  test.each(['[', '{"a":'])('an edition nested 5,000 deep in %s', async open => {
    const deep = open.repeat(5000)
    const file = join(scratch, EDITION)
    writeFileSync(file, deep)
    expect(readEdition(deep)).toBeNull()
    const { code, errors } = await runCommand(['compare', file, 'vinegar-mother'])
    expect(errors).toContain('is no published edition')
    expect(code).toBe(2)
  })

  test('a full disk behind the output', () => {
    expectSentence(shell(`${command('schema', '--help')} > /dev/full`), /no room is left/)
  })

  test('a reader that stops early is none', () => {
    const { status, stderr } = shell(
      `set -o pipefail; ${command('schema', '--help')} | head -c 1 > ${quote(join(scratch, 'first'))}`
    )
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
  })

  test('though nobody hears what went wrong', () => {
    const closed = shell(`${command('wlak')} 2>&-`)
    expect(closed.status).toBe(2)
    const gone = shell(`{ ${command('wlak')} 2>&1 >&3 | true; exit "\${PIPESTATUS[0]}"; } 3>&1`)
    expect(gone.status).toBe(2)
  })

  test.each([
    [new RangeError('Maximum call stack size exceeded'), /nested too deeply/],
    [new TypeError('x is undefined'), /^This is a mistake of jarside itself: x is undefined\./],
    ['a text', /^This is a mistake of jarside itself: a text\./]
  ])('%s', (error, words) => {
    expect(faultText(error)).toMatch(words)
  })
})

describe('a name that steers a terminal', () => {
  const ESC = '\u001b[2J\u202e'

  test('of a file in the project is shown without what steers', async () => {
    const own = newProject()
    renameSync(join(own, 'shared/pieces/start.yaml'), join(own, `shared/pieces/${ESC}.yaml`))
    writeFileSync(join(own, `trees/${ESC}.yaml`), 'id: [')
    const { code, output, errors } = await runCommand(['check', '--in', own])
    expect(output).toContain('trees/·[2J·.yaml:')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for.
    expect(output + errors).not.toMatch(/[\u001b\u202e]/)
    expect(code).toBe(1)
  })

  test('of a folder or an edition is as well', async () => {
    for (const args of [
      ['check', '--in', `/${ESC}`],
      ['compare', `${ESC}.yaml`, 'vinegar-mother'],
      ['table', 'vinegar-mother', '--format', 'csv', '--out', `/proc/${ESC}`]
    ]) {
      const { code, errors } = await runCommand(args)
      // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for.
      expect(errors).not.toMatch(/[\u001b\u202e]/)
      expect(code).toBe(2)
    }
  })
})
