import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync
} from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { BadUse } from './bad-use.ts'

/** Writes a file whole or not at all: whoever opens it finds what stood there before, or all that is new. */
export function writeWhole(named: string, content: string | Uint8Array): void {
  // A link is written through, and what is no file (a pipe, a terminal) has no whole to keep.
  const file = existsSync(named) ? realpathSync(named) : named
  if (existsSync(file) && !statSync(file).isFile()) {
    writeFileSync(file, content)
    return
  }
  const part = `${file}.${process.pid}.part`
  try {
    const opened = openSync(part, 'wx')
    try {
      writeFileSync(opened, content)
      fsyncSync(opened)
    } finally {
      closeSync(opened)
    }
    renameSync(part, file)
  } catch (error) {
    rmSync(part, { force: true })
    throw error
  }
}

/**
 * Makes a folder, with those above it that are missing. One by one: Node's own way never comes back
 * where a folder can be made at no level.
 */
export function makeFolder(folder: string): void {
  const missing: string[] = []
  for (let path = resolve(folder); !existsSync(path); path = dirname(path)) missing.unshift(path)
  for (const each of missing) mkdirOnce(each)
  if (!statSync(folder).isDirectory()) throw new BadUse(`\`${folder}\` is no folder.`)
}

function mkdirOnce(folder: string): void {
  try {
    mkdirSync(folder)
  } catch (error) {
    // Somebody else made it at the same moment.
    const isThere = existsSync(folder) && statSync(folder).isDirectory()
    if (!isThere) throw error
  }
}

const LOCK = 'trees/.being-written'
const TRIES = 150
const PAUSE = 100

/** Does what must not be done twice at a time in one project; a second one waits for the first. */
export async function oneAtATime<T>(project: string, work: () => T): Promise<T> {
  const lock = join(project, LOCK)
  for (let tries = 1; !isTaken(lock); tries++) {
    if (tries === TRIES) {
      throw new BadUse(
        `Something else is being published or withdrawn. If nothing is, delete \`${lock}\`.`
      )
    }
    await wait(PAUSE)
  }
  try {
    return work()
  } finally {
    rmSync(lock, { force: true })
  }
}

function isTaken(lock: string): boolean {
  try {
    writeFileSync(lock, `${process.pid}\n`, { flag: 'wx' })
    return true
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EEXIST') return false
    throw error
  }
}
