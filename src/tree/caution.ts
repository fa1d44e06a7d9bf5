import { linkedOf } from './linked.ts'
import type { Track } from './observation.ts'
import { type Effect, type Tree, USES, type Use } from './tree.ts'

/** The most cautious verdict on each track, the most cautious use, and every note met. */
export interface Outcome {
  readonly person: string | null
  readonly container: string | null
  readonly batch: string | null
  readonly use: Use
  readonly notes: readonly string[]
}

export const NOTHING_YET: Outcome = {
  person: null,
  container: null,
  batch: null,
  use: 'as-directed',
  notes: []
}

/** The verdicts of one track, gentlest first. */
export function verdictsOf(tree: Tree, track: Track): readonly string[] {
  return linkedOf(tree).byTrack[track]
}

/** How cautious a verdict is on its track: 1 for the gentlest; 0 for none at all. */
export function level(tree: Tree, track: Track, verdict: string | null): number {
  if (verdict === null) return 0
  const { levels, verdicts } = linkedOf(tree)
  return verdicts.get(verdict)?.track === track ? (levels.get(verdict) ?? 0) : 0
}

export function useLevel(use: Use): number {
  return USES.indexOf(use)
}

/** The verdict of that id. @throws Error when the tree knows none: loading has made that impossible. */
export function verdict(tree: Tree, id: string) {
  const found = linkedOf(tree).verdicts.get(id)
  if (found === undefined) throw new Error(`no verdict ${id}`)
  return found
}

/** Joins an effect, and the verdict of an end, to an outcome: the more cautious counts on each track. */
export function join(tree: Tree, outcome: Outcome, effect: Effect, end?: string): Outcome {
  const raised = end === undefined ? effect.raise : [...effect.raise, end]
  let { use } = outcome
  const tracks = { person: outcome.person, container: outcome.container, batch: outcome.batch }
  for (const id of raised) {
    const { track, ceiling } = verdict(tree, id)
    if (level(tree, track, id) > level(tree, track, tracks[track])) tracks[track] = id
    use = lessFree(use, ceiling)
  }
  const notes = effect.notes.filter(note => !outcome.notes.includes(note))
  return { ...tracks, use: lessFree(use, effect.use), notes: [...outcome.notes, ...notes] }
}

export function lessFree(a: Use, b: Use): Use {
  return useLevel(a) > useLevel(b) ? a : b
}

/** Whether a container verdict means that nobody handles the jar to answer what is asked of it. */
export const isAskedFromMemory = (tree: Tree, container: string | null): boolean =>
  isLeft(tree, container) ||
  (container !== null && tree.advice.verdicts[container]?.fromMemory === true)

/** Whether a container verdict means that nobody goes back to the jar. */
export const isLeft = (tree: Tree, container: string | null): boolean =>
  container !== null && tree.advice.verdicts[container]?.leaveIt === true
