import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'

const LOCK = 'DPkg::Lock::Timeout=120'
const NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome']

/** Flags for a browser that starts as root too, alone, and asks the network for nothing. */
export const BROWSER_FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync'
]

/**
 * The browser for tests and pictures: the one that JARSIDE_BROWSER names, else one on the path, else the
 * system's package manager is asked for it, as root and without a prompt.
 *
 * @throws Error with what to install, when there is none to be had.
 */
export function findBrowser() {
  const named = process.env.JARSIDE_BROWSER
  if (named !== undefined && named !== '') {
    if (existsSync(named)) return named
    throw new Error(`JARSIDE_BROWSER names ${named}, which is not there.`)
  }
  const found = onPath()
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
    const installed = onPath()
    if (installed !== undefined) return installed
  }
  throw new Error(
    'The browser tests need Chromium or Chrome: install it, or name it in JARSIDE_BROWSER.'
  )
}

function onPath() {
  const folders = (process.env.PATH ?? '').split(delimiter)
  return NAMES.flatMap(name => folders.map(folder => join(folder, name))).find(existsSync)
}
