import { deserialize, serialize } from 'node:v8'
import { TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import type { Tree } from '../tree/tree.ts'
import { keepEntry, readEntry } from './kept-entry.ts'

/** One for each tree that was walked, in each state of the authored files; at most some 100 kB. */
const MOST = 60

/**
 * The diagrams of a tree: taken from the folder where the key was kept before. The key has to change
 * with everything that the tree is loaded from, and with the code.
 */
export function diagramsThrough(folder: string, key: string, tree: Tree): TreeDiagrams {
  const entries = { folder, most: MOST }
  const kept = readDiagrams(readEntry(entries, key), tree)
  if (kept !== null) return kept
  const diagrams = new TreeDiagrams(tree)
  keepEntry(entries, key, () => serialize(diagrams.packed()))
  return diagrams
}

function readDiagrams(content: Uint8Array | null, tree: Tree): TreeDiagrams | null {
  try {
    return content && TreeDiagrams.of(tree, deserialize(content))
  } catch {
    return null
  }
}
