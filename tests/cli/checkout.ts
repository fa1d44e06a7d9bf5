import { spawn } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Ran } from './run-command.ts'

const root = join(import.meta.dirname, '../..')
const HOLDS = [
  ...['.ci', 'tools', 'src', 'trees', 'shared', 'locales', 'public/office.json'],
  ...['package.json', 'package-lock.json', 'tsconfig.json', 'vite.command.config.ts']
]

/** A copy of this checkout in a temporary folder, with a cache of its own that is empty. */
export interface Checkout {
  readonly folder: string
  /** Runs its command line as a shell does: a real process, its streams piped. */
  run(...args: readonly string[]): Promise<Ran>
  remove(): void
}

/** Copies what the command line needs; the packages are those of this checkout. */
export function checkout(): Checkout {
  const folder = mkdtempSync(join(tmpdir(), 'jarside-checkout-'))
  for (const name of HOLDS) cpSync(join(root, name), join(folder, name), { recursive: true })
  const [from, to] = [join(root, 'node_modules'), join(folder, 'node_modules')]
  mkdirSync(to)
  for (const name of readdirSync(from).filter(name => !name.startsWith('.'))) {
    symlinkSync(join(from, name), join(to, name))
  }
  // By this file an install tells that nothing is missing: copied last, it is the newest.
  cpSync(join(from, '.package-lock.json'), join(to, '.package-lock.json'))
  const env = { ...process.env, XDG_CACHE_HOME: join(folder, 'users-cache') }
  return {
    folder,
    run: (...args) =>
      new Promise((resolve, reject) => {
        const child = spawn(process.execPath, [join(folder, 'tools/jarside.mjs'), ...args], {
          stdio: ['ignore', 'pipe', 'pipe'],
          env
        })
        const said = { output: '', errors: '' }
        child.stdout.setEncoding('utf8').on('data', text => {
          said.output += text
        })
        child.stderr.setEncoding('utf8').on('data', text => {
          said.errors += text
        })
        child.on('error', reject)
        child.on('close', code => resolve({ ...said, code: code ?? -1 }))
      }),
    remove: () => rmSync(folder, { recursive: true })
  }
}
