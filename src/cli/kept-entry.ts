import { createHash } from 'node:crypto'
import { readdirSync, readFileSync, rmSync, statSync, utimesSync } from 'node:fs'
import { join } from 'node:path'
import { writeWhole } from './write-file.ts'

const SUM_BYTES = 32

/** One kind of entries, of which the most recently used stay. */
export interface Entries {
  readonly folder: string
  readonly most: number
}

/** The content of an entry; `null` where there is none, or one that is damaged or stands under another's name. */
export function readEntry({ folder }: Entries, key: string): Uint8Array | null {
  const entry = join(folder, key)
  try {
    const bytes = readFileSync(entry)
    const content = bytes.subarray(SUM_BYTES)
    // A damaged entry may well be read without an error, as another tree.
    if (!sumOf(key, content).equals(bytes.subarray(0, SUM_BYTES))) return null
    markUsed(entry)
    return content
  } catch {
    return null
  }
}

/** Keeps an entry, whole or not at all. Where it cannot be kept it is made again the next time. */
export function keepEntry({ folder, most }: Entries, key: string, write: () => Uint8Array): void {
  try {
    const content = write()
    writeWhole(join(folder, key), Buffer.concat([sumOf(key, content), content]))
    dropOldest(folder, most)
  } catch {
    // The disk is full, the folder was taken away, or another process keeps the same.
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

function dropOldest(folder: string, most: number): void {
  const entries = readdirSync(folder)
    .map(name => join(folder, name))
    .flatMap(path => {
      const used = statSync(path, { throwIfNoEntry: false })?.mtimeMs
      return used === undefined ? [] : [{ path, used }]
    })
    .sort((a, b) => b.used - a.used)
  for (const { path } of entries.slice(most)) rmSync(path, { force: true })
}
