import { accessSync, constants, existsSync } from 'node:fs'
import { homedir } from 'node:os'
import { isAbsolute, join } from 'node:path'
import { makeFolder } from './write-file.ts'

/**
 * Where the command keeps what it can always make anew, of one kind: beside the packages of the
 * project, else in the cache of whoever runs it. `null` where nothing can be written.
 */
export function cacheFolder(
  project: string,
  kind: string,
  env: NodeJS.ProcessEnv = process.env
): string | null {
  const packages = join(project, 'node_modules')
  const beside = existsSync(packages) ? [join(packages, '.cache')] : []
  for (const folder of [...beside, usersCache(env)]) {
    const path = join(folder, 'jarside', kind)
    if (canWrite(path)) return path
  }
  return null
}

function usersCache({ XDG_CACHE_HOME: named, LOCALAPPDATA: local }: NodeJS.ProcessEnv): string {
  if (named !== undefined && isAbsolute(named)) return named
  if (process.platform === 'win32' && local) return local
  return process.platform === 'darwin'
    ? join(homedir(), 'Library/Caches')
    : join(homedir(), '.cache')
}

function canWrite(folder: string): boolean {
  try {
    makeFolder(folder)
    accessSync(folder, constants.W_OK)
    return true
  } catch {
    return false
  }
}
