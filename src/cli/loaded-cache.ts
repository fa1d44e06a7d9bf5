import { createHash } from 'node:crypto'
import { readdirSync, readFileSync, rmSync, statSync, utimesSync } from 'node:fs'
import { join } from 'node:path'
import type { AuthoredFile, Loaded } from '../load/load.ts'
import { readDeferred, writeDeferred } from './deferred.ts'
import type { LoadFiles } from './read-project.ts'
import { writeWhole } from './write-file.ts'

/** Each is some megabytes. */
const KEPT = 20
const SUM_BYTES = 32

/** Where entries are kept, and which code makes what they hold. */
export interface LoadedCache {
  readonly folder: string
  /** Changes whenever the code of loading may have changed. */
  readonly code: string
}

/**
 * What loading makes of the files: taken from the cache when the same code has loaded the very same
 * files before. A cache that cannot be read or written is no error: the files are loaded.
 */
export async function loadThrough(
  { folder, code }: LoadedCache,
  files: readonly AuthoredFile[],
  load: LoadFiles
): Promise<Loaded> {
  const key = keyOf(files, code)
  const entry = join(folder, key)
  const kept = readEntry(entry, key)
  if (kept !== null) return kept
  const loaded = await load(files)
  try {
    const content = writeDeferred(loaded)
    writeWhole(entry, Buffer.concat([sumOf(key, content), content]))
    dropOldest(folder)
  } catch {
    // The disk is full, or the folder was taken away: the next one loads again.
  }
  return loaded
}

/** Changes with every byte of every file, with the code, and with how this Node.js writes values. */
function keyOf(files: readonly AuthoredFile[], code: string): string {
  const hash = createHash('sha256')
  // Each part is told from the next by its length.
  for (const part of [code, process.version, ...files.flatMap(({ path, text }) => [path, text])]) {
    hash.update(`${part.length}:`).update(part)
  }
  return hash.digest('hex')
}

/** `null` where there is no entry, or one that is damaged or stands under another's name. */
function readEntry(entry: string, key: string): Loaded | null {
  try {
    const bytes = readFileSync(entry)
    const content = bytes.subarray(SUM_BYTES)
    // A damaged entry may well be read without an error, as another tree.
    if (!sumOf(key, content).equals(bytes.subarray(0, SUM_BYTES))) return null
    const loaded = readDeferred(content) as Loaded
    markUsed(entry)
    return loaded
  } catch {
    return null
  }
}

const sumOf = (key: string, content: Uint8Array): Buffer =>
  createHash('sha256').update(key).update(content).digest()

/** What is used stays: the oldest entry is the one that was not used for longest. */
function markUsed(entry: string): void {
  try {
    const now = new Date()
    utimesSync(entry, now, now)
  } catch {
    // Somebody else's folder: then the oldest is the one written first.
  }
}

function dropOldest(folder: string): void {
  const entries = readdirSync(folder)
    .map(name => join(folder, name))
    .flatMap(path => {
      const at = statSync(path, { throwIfNoEntry: false })?.mtimeMs
      return at === undefined ? [] : [{ path, at }]
    })
    .sort((a, b) => b.at - a.at)
  for (const { path } of entries.slice(KEPT)) rmSync(path, { force: true })
}
