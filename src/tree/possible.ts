import { allowedValues } from './allowed.ts'
import type { Answers } from './answers.ts'
import { level, useLevel, verdictsOf } from './caution.ts'
import type { Track } from './observation.ts'
import { reachable } from './reach.ts'
import { type Tree, USES, type Use } from './tree.ts'
import { diagramsOf } from './tree-diagrams.ts'
import { walk } from './walk.ts'

/** What can still come of a set of answers, gentlest first on each side. */
export interface Possible {
  /** `null` stands for nothing on that track. */
  readonly person: readonly (string | null)[]
  readonly container: readonly (string | null)[]
  readonly batch: readonly (string | null)[]
  readonly use: readonly Use[]
  readonly atLeast: AtLeast
  /** All three tracks and the use are decided, whatever is told next of what the tree would ask. */
  readonly settled: boolean
}

/** The gentlest that can still happen on each side. */
export interface AtLeast {
  readonly person: string | null
  readonly container: string | null
  readonly batch: string | null
  readonly use: Use
}

/**
 * What can still happen: exactly the outcomes of the complete sets that hold these answers; once the
 * walk is finished, its outcome. An emergency is left out until an emergency sign is told.
 *
 * A fact told after the walk is finished that nothing asked for (a volunteered sign, a second answer to
 * a settled observation) is a correction, not a narrowing: it can only make the outcome more cautious.
 */
export function possible(tree: Tree, answers: Answers): Possible {
  const { finished, outcome } = walk(tree, answers)
  if (finished) {
    const { person, container, batch, use } = outcome
    return summary([person], [container], [batch], [use])
  }
  const made = diagramsOf(tree)
  const open = made.variables.map(variable => allowedValues(tree, variable, answers))
  const levels = (lens: Track | 'use') =>
    [...reachable(made.diagrams, made.of(lens), open)].sort((a, b) => a - b)
  const track = (name: Track) => levels(name).map(at => verdictsOf(tree, name)[at - 1] ?? null)
  return summary(
    track('person'),
    track('container'),
    track('batch'),
    levels('use').map(at => USES[at] as Use)
  )
}

function summary(
  person: readonly (string | null)[],
  container: readonly (string | null)[],
  batch: readonly (string | null)[],
  use: readonly Use[]
): Possible {
  const gentlest = (list: readonly (string | null)[]) => list[0] ?? null
  return {
    person,
    container,
    batch,
    use,
    atLeast: {
      person: gentlest(person),
      container: gentlest(container),
      batch: gentlest(batch),
      use: use[0] ?? 'never'
    },
    settled: [person, container, batch, use].every(list => list.length === 1)
  }
}

/** Whether everything still possible in the second was possible in the first. */
export function narrows(before: Possible, after: Possible): boolean {
  const within = <T>(a: readonly T[], b: readonly T[]) => a.every(x => b.includes(x))
  return (
    within(after.person, before.person) &&
    within(after.container, before.container) &&
    within(after.batch, before.batch) &&
    within(after.use, before.use)
  )
}

/** Whether no side of the second is gentler than the first. */
export function noGentler(tree: Tree, before: AtLeast, after: AtLeast): boolean {
  return (
    useLevel(after.use) >= useLevel(before.use) &&
    (['person', 'container', 'batch'] as const).every(
      track => level(tree, track, after[track]) >= level(tree, track, before[track])
    )
  )
}
