import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'

const NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome']

/** Flags for a browser that starts as root too, alone, and asks the network for nothing. */
export const BROWSER_FLAGS: readonly string[] = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync'
]

/**
 * The browser's program: the one that JARSIDE_BROWSER names, else one on the path; undefined when
 * there is none.
 *
 * @throws Error when JARSIDE_BROWSER names a file that is not there.
 */
export function browserProgram(env = process.env): string | undefined {
  const named = env.JARSIDE_BROWSER
  if (named !== undefined && named !== '') {
    if (existsSync(named)) return named
    throw new Error(`JARSIDE_BROWSER names ${named}, which is not there.`)
  }
  const folders = (env.PATH ?? '').split(delimiter)
  return NAMES.flatMap(name => folders.map(folder => join(folder, name))).find(existsSync)
}
