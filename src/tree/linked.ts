import type { ChoiceObservation, Track } from './observation.ts'
import type { Question, Tree, Verdict } from './tree.ts'

/** What is looked up in a tree at every answer, gathered once. */
export interface Linked {
  readonly verdicts: ReadonlyMap<string, Verdict>
  /** How cautious a verdict is on its own track: 1 for the gentlest. */
  readonly levels: ReadonlyMap<string, number>
  /** The verdicts of each track, gentlest first. */
  readonly byTrack: Readonly<Record<Track, readonly string[]>>
  /** By observation: those whose answers count as a second answer to it. */
  readonly settlers: ReadonlyMap<string, readonly ChoiceObservation[]>
  /** By observation: the questions that ask it. */
  readonly questions: ReadonlyMap<string, readonly Question[]>
}

const linked = new WeakMap<Tree, Linked>()

/** The indexes of a tree, made once. */
export function linkedOf(tree: Tree): Linked {
  const before = linked.get(tree) ?? link(tree)
  linked.set(tree, before)
  return before
}

/** The observations whose answers count as a second answer to this one. */
export function settlersOf(tree: Tree, observation: string): readonly ChoiceObservation[] {
  return linkedOf(tree).settlers.get(observation) ?? NONE
}

const NONE: readonly ChoiceObservation[] = []

function link(tree: Tree): Linked {
  const byTrack: Record<Track, string[]> = { person: [], container: [], batch: [] }
  const levels = new Map<string, number>()
  // INVARIANT: level 0 is no verdict, so the gentlest verdict of a track is 1; verdicts stand gentlest first.
  for (const { id, track } of tree.verdicts) levels.set(id, byTrack[track].push(id))
  const settlers = new Map<string, ChoiceObservation[]>()
  for (const observation of Object.values(tree.observations)) {
    if (observation.kind !== 'choice' || observation.settles === undefined) continue
    settlers.set(observation.settles, [...(settlers.get(observation.settles) ?? []), observation])
  }
  const questions = new Map<string, Question[]>()
  for (const question of Object.values(tree.questions)) {
    questions.set(question.asks, [...(questions.get(question.asks) ?? []), question])
  }
  return {
    verdicts: new Map(tree.verdicts.map(verdict => [verdict.id, verdict])),
    levels,
    byTrack,
    settlers,
    questions
  }
}
