import type { TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import { effectsOf } from '../tree/effects.ts'
import type { Lens } from '../tree/lens.ts'
import { TRACKS } from '../tree/observation.ts'
import type { Question, Tree } from '../tree/tree.ts'

/** Every side of a tree's outcome: the tracks, the use, and each note that some answer adds. */
export function lensesOf(tree: Tree): readonly Lens[] {
  const notes = Object.values(tree.questions).flatMap(notesOf)
  return [...TRACKS, 'use', ...[...new Set(notes)].map(note => ({ note }))]
}

/** The notes that answers to one question add. */
export function notesOf(question: Question): readonly string[] {
  return effectsOf(question).flatMap(({ notes }) => notes)
}

/** A side on which no answer of any tree ever does anything. */
const NOTHING: Lens = { note: '' }

const cache = new WeakMap<TreeDiagrams, Map<string, number>>()

/** The sets of answers on whose walk a question lies, as a diagram that is 1 for them. */
export function passing(compiled: TreeDiagrams, question: string): number {
  const of = cache.get(compiled) ?? new Map<string, number>()
  cache.set(compiled, of)
  const diagram =
    of.get(question) ?? compiled.instead(NOTHING, question, compiled.diagrams.constant(1))
  of.set(question, diagram)
  return diagram
}
