// Where the browser is, installed first where it can be: node --import tsx tools/browser.mjs
import { spawnSync } from 'node:child_process'
import { pathToFileURL } from 'node:url'
import { BROWSER_FLAGS, browserProgram } from '../src/cli/browser.ts'

export { BROWSER_FLAGS }

const LOCK = 'DPkg::Lock::Timeout=120'
/**
 * The browser for tests and pictures: the one that JARSIDE_BROWSER names, else one on the path, else the
 * system's package manager is asked for it, as root and without a prompt.
 *
 * @throws Error with what to install, when there is none to be had.
 */
export function findBrowser() {
  const found = browserProgram()
  if (found !== undefined) return found
  if (process.getuid?.() === 0 && spawnSync('apt-get', ['--version']).status === 0) {
    console.error('Installing chromium with apt-get …')
    const quiet = {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
    }
    // Another install may hold the lock for a moment; a failed one ends in the sentence below.
    const apt = (...args) => spawnSync('apt-get', ['-qq', '-o', LOCK, ...args], quiet)
    apt('update')
    apt('install', '-y', '--no-install-recommends', 'chromium')
    const installed = browserProgram()
    if (installed !== undefined) return installed
  }
  throw new Error(
    'The browser tests need Chromium or Chrome: install it, or name it in JARSIDE_BROWSER.'
  )
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.log(findBrowser())
