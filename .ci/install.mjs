// Installs what package-lock.json lists, only when that is missing or older than the lock file.
import { existsSync, lstatSync, statSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'

export const root = join(dirname(fileURLToPath(import.meta.url)), '..')

/** Installs if need be; gives the exit code of npm, 0 when there was nothing to do. */
export function install() {
  const lock = join(root, 'package-lock.json')
  // npm writes this file last: a broken-off install leaves it missing.
  const folder = join(root, 'node_modules')
  const mark = join(folder, '.package-lock.json')
  if (existsSync(mark) && (!existsSync(lock) || statSync(mark).mtimeMs >= statSync(lock).mtimeMs)) {
    return 0
  }
  // A linked folder is another checkout's: npm ci would empty it under whoever works there.
  if (existsSync(mark) && lstatSync(folder).isSymbolicLink()) return 0
  const why = existsSync(mark) ? 'older than the lock file' : 'missing'
  process.stderr.write(`Installing packages (npm ci): node_modules is ${why}.\n`)
  const { spawnSync } = process.getBuiltinModule('node:child_process')
  // npm's own talk goes to stderr, so that the output of the command stays its own.
  const { status } = spawnSync('npm', ['ci', '--no-audit', '--no-fund'], {
    cwd: root,
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32'
  })
  if (status !== 0) process.stderr.write('npm ci failed: see the lines above.\n')
  return status ?? 1
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) process.exitCode = install()
