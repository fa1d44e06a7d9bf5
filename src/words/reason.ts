import { reasonsFor } from '../tree/reasons.ts'
import type { Tree } from '../tree/tree.ts'

/** The first of the notes said that gives the reason for a batch's verdict; null where none does. */
export function reasonFor(tree: Tree, id: string, notes: readonly string[]): string | null {
  const reasons = reasonsFor(tree, id)
  return notes.find(note => reasons.has(note)) ?? null
}
