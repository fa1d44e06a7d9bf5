import { level, useLevel, verdict } from './caution.ts'
import type { Track } from './observation.ts'
import type { Effect, Tree } from './tree.ts'

/** One side of an outcome as a level of caution: a track, the use, or whether a note is said. */
export type Lens = Track | 'use' | { readonly note: string }

/** The level that an effect, and the verdict of an end, gives on one side of the outcome. */
export function levelOf(tree: Tree, lens: Lens, effect: Effect, end?: string): number {
  if (typeof lens === 'object') return effect.notes.includes(lens.note) ? 1 : 0
  const raised = end === undefined ? effect.raise : [...effect.raise, end]
  if (lens === 'use') {
    const ceilings = raised.map(id => useLevel(verdict(tree, id).ceiling))
    return Math.max(useLevel(effect.use), ...ceilings)
  }
  return Math.max(
    0,
    ...raised.map(id => (verdict(tree, id).track === lens ? level(tree, lens, id) : 0))
  )
}

export function lensName(lens: Lens): string {
  return typeof lens === 'object' ? `note ${lens.note}` : lens
}
