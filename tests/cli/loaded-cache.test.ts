import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { isDeepStrictEqual } from 'node:util'
import { afterAll, beforeEach, describe, expect, test } from 'vitest'
import { cacheFolder } from '../../src/cli/cache-folder.ts'
import { type LoadedCache, loadThrough } from '../../src/cli/loaded-cache.ts'
import { type LoadFiles, loadAnew } from '../../src/cli/read-project.ts'
import { openShipped } from '../helpers/shipped.ts'
import { FAULTY, faultyProject, wholeProject } from '../load/project-files.ts'

const home = mkdtempSync(join(tmpdir(), 'jarside-cache-'))
const folder = join(home, 'loaded')
const cache: LoadedCache = { folder, code: 'a' }
beforeEach(() => {
  rmSync(folder, { recursive: true, force: true })
  mkdirSync(folder)
})
afterAll(() => rmSync(home, { recursive: true }))

const never: LoadFiles = async () => {
  throw new Error('loaded anew')
}
const whole = wholeProject()
const entries = () => readdirSync(folder).map(name => join(folder, name))

describe('the cache gives what loading gives', () => {
  test('of the shipped project', async () => {
    const { files, loaded } = await openShipped()
    expect(await loadThrough(cache, files, async () => loaded)).toBe(loaded)
    expect(isDeepStrictEqual(await loadThrough(cache, files, never), loaded)).toBe(true)
  })

  test('of every project in which something is found', async () => {
    for (const name of FAULTY) {
      const { files } = faultyProject(name)
      const loaded = await loadThrough(cache, files, loadAnew)
      const kept = await loadThrough(cache, files, never)
      expect(isDeepStrictEqual(kept, loaded), name).toBe(true)
    }
  })
})

describe('an entry is that of one content and one code', () => {
  const empty = async (files: typeof whole, { code } = cache) => {
    await expect(loadThrough({ folder, code }, files, never)).rejects.toThrow('loaded anew')
  }

  test('a byte more, a letter changed or another name in any file is another content', async () => {
    await loadThrough(cache, whole, loadAnew)
    for (const [at, { path, text }] of whole.entries()) {
      const other = { text: [`${text} `, text.replace(/[a-z]/, 'Q')], path: [`${path}x`] }
      for (const changed of other.text) await empty(whole.with(at, { path, text: changed }))
      for (const changed of other.path) await empty(whole.with(at, { path: changed, text }))
      await empty(whole.toSpliced(at, 1))
    }
    await loadThrough(cache, whole, never)
  })

  test('what goes from one file over to the next is another content', async () => {
    await loadThrough(cache, [{ path: 'a', text: 'bc' }], loadAnew)
    await empty([{ path: 'ab', text: 'c' }])
  })

  test('other code has an entry of its own', async () => {
    await loadThrough(cache, whole, loadAnew)
    await empty(whole, { ...cache, code: 'b' })
  })
})

describe('an entry that is not what was written is left aside, and written anew', () => {
  const expected = loadAnew(whole)
  const isLeftAside = async () => {
    expect(await loadThrough(cache, whole, loadAnew)).toEqual(await expected)
    expect(await loadThrough(cache, whole, never)).toEqual(await expected)
  }

  test('a byte turned anywhere, an end cut off, nothing at all', async () => {
    await loadThrough(cache, whole, loadAnew)
    const [entry = ''] = entries()
    const bytes = readFileSync(entry)
    for (const at of [0, 31, 32, 40, bytes.length >> 1, bytes.length - 1]) {
      const turned = Buffer.from(bytes)
      turned[at] = (turned[at] ?? 0) ^ 1
      writeFileSync(entry, turned)
      await isLeftAside()
    }
    for (const length of [0, 7, 32, bytes.length - 1]) {
      writeFileSync(entry, bytes.subarray(0, length))
      await isLeftAside()
    }
  })

  test('one that stands under the name of another content', async () => {
    await loadThrough(cache, whole, loadAnew)
    const [entry = ''] = entries()
    await loadThrough({ ...cache, code: 'b' }, whole, loadAnew)
    const other = entries().find(path => path !== entry) ?? ''
    copyFileSync(other, entry)
    await isLeftAside()
  })
})

describe('what cannot be written is no error', () => {
  test('a folder that is missing, or that is a file', async () => {
    writeFileSync(join(home, 'file'), '')
    for (const at of ['gone', 'file']) {
      const loaded = await loadThrough({ ...cache, folder: join(home, at) }, whole, loadAnew)
      expect(loaded.trees).toHaveLength(1)
    }
    expect(existsSync(join(home, 'gone'))).toBe(false)
  })
})

test('the folder stays bounded, and what is used stays in it', async () => {
  const code = (n: number) => loadThrough({ folder, code: `${n}` }, whole, loadAnew)
  for (let n = 0; n < 25; n++) {
    await code(n)
    await loadThrough({ folder, code: '0' }, whole, never)
  }
  expect(entries()).toHaveLength(20)
})

describe('where the cache is', () => {
  const project = join(home, 'project')
  const env = { XDG_CACHE_HOME: join(home, 'users') }

  test('beside the packages of the project, where there are any', () => {
    mkdirSync(join(project, 'node_modules'), { recursive: true })
    const at = join(project, 'node_modules/.cache/jarside/loaded')
    expect(cacheFolder(project, 'loaded', env)).toBe(at)
    expect(existsSync(at)).toBe(true)
  })

  test('else, or where nothing can be written there, in the cache of the user', () => {
    const users = join(home, 'users/jarside/loaded')
    expect(cacheFolder(join(home, 'elsewhere'), 'loaded', env)).toBe(users)
    rmSync(join(project, 'node_modules/.cache'), { recursive: true, force: true })
    writeFileSync(join(project, 'node_modules/.cache'), '')
    expect(cacheFolder(project, 'loaded', env)).toBe(users)
  })

  test('nowhere, where nothing can be written at all', () => {
    writeFileSync(join(home, 'full'), '')
    expect(cacheFolder(home, 'loaded', { XDG_CACHE_HOME: join(home, 'full') })).toBeNull()
  })
})
