import { createHash } from 'node:crypto'
import { keepDiagrams } from '../diagrams/tree-diagrams.ts'
import type { AuthoredFile, Loaded } from '../load/load.ts'
import { readDeferred, writeDeferred } from './deferred.ts'
import { diagramsThrough } from './diagrams-cache.ts'
import { type Entries, keepEntry, readEntry } from './kept-entry.ts'
import type { LoadFiles } from './read-project.ts'

/** Each is some megabytes. */
const MOST = 20

/** Where entries are kept, and which code makes what they hold. */
export interface LoadedCache {
  readonly folder: string
  /** Where the diagrams of the trees are kept; they are compiled anew without it. */
  readonly diagrams?: string | null
  /** Changes whenever the code of loading may have changed. */
  readonly code: string
}

/**
 * What loading makes of the files: taken from the cache when the same code has loaded the very same
 * files before. A cache that cannot be read or written is no error: the files are loaded.
 */
export async function loadThrough(
  { folder, diagrams, code }: LoadedCache,
  files: readonly AuthoredFile[],
  load: LoadFiles
): Promise<Loaded> {
  const key = keyOf(files, code)
  const loaded = await loadedAs(key, { folder, most: MOST }, () => load(files))
  if (typeof diagrams === 'string') {
    for (const tree of loaded.trees) {
      keepDiagrams(tree, () => diagramsThrough(diagrams, `${key}-${tree.id}`, tree))
    }
  }
  return loaded
}

async function loadedAs(
  key: string,
  entries: Entries,
  load: () => Promise<Loaded>
): Promise<Loaded> {
  const kept = readLoaded(readEntry(entries, key))
  if (kept !== null) return kept
  const loaded = await load()
  keepEntry(entries, key, () => writeDeferred(loaded))
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

function readLoaded(content: Uint8Array | null): Loaded | null {
  try {
    return content && (readDeferred(content) as Loaded)
  } catch {
    return null
  }
}
