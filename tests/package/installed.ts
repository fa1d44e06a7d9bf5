import { spawnSync } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { delimiter, join, relative } from 'node:path'

const root = join(import.meta.dirname, '../..')
const LEFT_OUT = ['node_modules', '.git', 'dist', 'lib', join('.ci', 'out')]

/** The package as somebody has it who packed it and installed it into an empty folder. */
export interface Installed {
  /** A folder of its own for everything; `remove` takes it away. */
  readonly folder: string
  /** The installed command. */
  readonly program: string
  /** What the package holds, by name. */
  readonly holds: readonly string[]
  run(...args: readonly string[]): {
    readonly code: number | null
    readonly output: string
    readonly errors: string
  }
  /** Installs another package of the checkout beside it. */
  add(name: string): void
  remove(): void
}

/**
 * Builds, packs and installs the package outside the checkout, and never asks the network: the
 * packages that it depends on are packed anew from those that the checkout has.
 *
 * @throws Error with what npm or the build said, when one of them fails.
 */
export function installed(): Installed {
  const folder = mkdtempSync(join(tmpdir(), 'jarside-package-'))
  try {
    return installedIn(folder)
  } catch (error) {
    rmSync(folder, { recursive: true })
    throw error
  }
}

function installedIn(folder: string): Installed {
  const checkout = join(folder, 'checkout')
  const home = join(folder, 'home')
  cpSync(root, checkout, {
    recursive: true,
    filter: file => !LEFT_OUT.includes(relative(root, file))
  })
  const { scripts, dependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
  // What `npm pack` runs, but for the install before it and the folder that it writes to.
  const build = String(scripts.prepack).replace('node .ci/install.mjs && ', '')
  shell(`${build} --logLevel warn --emptyOutDir --outDir ${join(checkout, 'lib')}`, root)
  const npm = `--ignore-scripts --offline --cache ${join(folder, 'cache')}`
  const packed = shell(`npm pack --json ${npm} --pack-destination ${folder}`, checkout)
  const [{ filename, files }] = JSON.parse(packed) as [
    { filename: string; files: readonly { path: string }[] }
  ]
  const install = (...from: readonly string[]) =>
    shell(
      `npm install ${npm} --install-links --no-audit --no-fund --prefix ${home} ${from.join(' ')}`,
      folder
    )
  const ofCheckout = (name: string) => join(root, 'node_modules', name)
  install(join(folder, filename), ...withTheirs(Object.keys(dependencies)).map(ofCheckout))
  const program = join(home, 'node_modules/.bin/jarside')
  return {
    folder,
    program,
    holds: files.map(({ path }) => path),
    run(...args) {
      const { status, stdout, stderr } = spawnSync(program, args, {
        cwd: folder,
        encoding: 'utf8',
        input: '',
        env: { ...withoutNpm(), XDG_CACHE_HOME: join(folder, 'users-cache') }
      })
      return { code: status, output: stdout, errors: stderr }
    },
    add: name => void install(ofCheckout(name)),
    remove: () => rmSync(folder, { recursive: true })
  }
}

/** Packages with all that they depend on in turn: npm would ask the network for those. */
function withTheirs(names: readonly string[]): readonly string[] {
  const all = new Set(names)
  // What is added while it is gone through is gone through as well.
  for (const name of all) {
    const text = readFileSync(join(root, 'node_modules', name, 'package.json'), 'utf8')
    for (const theirs of Object.keys(JSON.parse(text).dependencies ?? {})) all.add(theirs)
  }
  return [...all]
}

function shell(line: string, cwd: string): string {
  const path = [join(root, 'node_modules/.bin'), process.env.PATH].join(delimiter)
  const env = { ...withoutNpm(), PATH: path }
  const { status, stdout, stderr } = spawnSync(line, { cwd, env, shell: true, encoding: 'utf8' })
  if (status !== 0) throw new Error(`${line}\n${stdout}\n${stderr}`)
  return stdout
}

/** What `npm test` tells its scripts is about this checkout, and what Vitest sets is about tests. */
function withoutNpm(): NodeJS.ProcessEnv {
  const told = /^(npm_|INIT_CWD$|NODE_OPTIONS$|NODE_PATH$|NODE_ENV$|VITEST)/i
  return Object.fromEntries(Object.entries(process.env).filter(([name]) => !told.test(name)))
}
