import { verdict } from './caution.ts'
import { effectsOf } from './effects.ts'
import type { Branch, Effect, Tree } from './tree.ts'

/**
 * The notes that say why a batch has a verdict: those of an answer that brings it, and those written to
 * give its reason. None for a verdict that withholds nothing.
 */
export function reasonsFor(tree: Tree, id: string): ReadonlySet<string> {
  const { track, ceiling } = verdict(tree, id)
  if (track !== 'batch' || ceiling === 'as-directed') return new Set()
  const ofAnswers = Object.values(tree.questions)
    .flatMap(effectsOf)
    .filter(effect => brings(effect, id))
    .flatMap(({ notes }) => notes)
  const written = Object.entries(tree.advice.notes).flatMap(([note, { does }]) =>
    does.reasonFor?.includes(id) ? [note] : []
  )
  return new Set([...ofAnswers, ...written])
}

function brings(effect: Effect | Branch, id: string): boolean {
  const end = 'leads' in effect && 'end' in effect.leads ? effect.leads.end : null
  return end === id || effect.raise.includes(id)
}
