// Runs the command line of this project: npm run -s jarside -- <command>
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { install, root } from '../.ci/install.mjs'
import { builtCommand } from './command.mjs'

/** Runs `jarside` with the arguments, as a process of its own, and gives its exit code. */
export async function jarside(args) {
  const failed = install()
  if (failed) return failed
  const file = await builtCommand()
  return file === null ? fromSource(args) : spawned([file, ...args])
}

/** Compiles the source as it is read, which takes seconds each time. */
function fromSource(args) {
  const tsx = pathToFileURL(join(root, 'node_modules/tsx/dist/loader.mjs')).href
  const main = join(root, 'src/cli/main.ts')
  // The command may be called from any folder; how its source is compiled stands here.
  return spawned(['--import', tsx, main, ...args], {
    TSX_TSCONFIG_PATH: join(root, 'tsconfig.json')
  })
}

function spawned(args, env = {}) {
  // Only now: reading this module is time that a walk has no use for.
  const { spawnSync } = process.getBuiltinModule('node:child_process')
  // Ctrl-C reaches the child as well, which ends in its own way: this process only waits for it.
  process.on('SIGINT', () => {})
  const { status, signal } = spawnSync(process.execPath, args, {
    stdio: 'inherit',
    env: { ...process.env, ...env }
  })
  return signal === 'SIGINT' ? 130 : (status ?? 1)
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const failed = install()
  const file = failed ? null : await builtCommand()
  if (failed) process.exitCode = failed
  else if (file === null) process.exitCode = fromSource(process.argv.slice(2))
  // In this very process, which is started already: it reads the arguments and sets the exit code.
  else await import(pathToFileURL(file).href)
}
