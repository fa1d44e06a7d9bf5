// Runs the command line of this project: npm run -s jarside -- <command>
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { install, root } from '../.ci/install.mjs'

/** Runs `jarside` with the arguments and gives its exit code. */
export function jarside(args) {
  const failed = install()
  if (failed) return failed
  const tsx = pathToFileURL(join(root, 'node_modules/tsx/dist/loader.mjs')).href
  const main = join(root, 'src/cli/main.ts')
  // Ctrl-C reaches the child as well, which ends in its own way: this process only waits for it.
  process.on('SIGINT', () => {})
  const { status, signal } = spawnSync(process.execPath, ['--import', tsx, main, ...args], {
    stdio: 'inherit',
    // The command may be called from any folder; how its source is compiled stands here.
    env: { ...process.env, TSX_TSCONFIG_PATH: join(root, 'tsconfig.json') }
  })
  return signal === 'SIGINT' ? 130 : (status ?? 1)
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  process.exitCode = jarside(process.argv.slice(2))
}
