import { verdict } from '../tree/caution.ts'
import { effectsOf } from '../tree/effects.ts'
import type { Branch, Effect, Tree } from '../tree/tree.ts'

/**
 * The note that came with the answer which brought a batch's verdict: of the caller's own jar it says why.
 * Null for a verdict that withholds nothing, and where the answer came without a note.
 */
export function reasonFor(tree: Tree, id: string, notes: readonly string[]): string | null {
  const { track, ceiling } = verdict(tree, id)
  if (track !== 'batch' || ceiling === 'as-directed') return null
  const bringing = Object.values(tree.questions)
    .flatMap(effectsOf)
    .filter(effect => brings(effect, id))
  return notes.find(note => bringing.some(effect => effect.notes.includes(note))) ?? null
}

function brings(effect: Effect | Branch, id: string): boolean {
  const end = 'leads' in effect && 'end' in effect.leads ? effect.leads.end : null
  return end === id || effect.raise.includes(id)
}
