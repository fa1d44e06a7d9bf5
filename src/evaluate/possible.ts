import { diagramsOf } from '../diagrams/tree-diagrams.ts'
import { type Answers, signsOf } from '../tree/answers.ts'
import { level, type Outcome, useLevel, verdictsOf } from '../tree/caution.ts'
import { emergenciesTold } from '../tree/emergency.ts'
import type { Track } from '../tree/observation.ts'
import { type Tree, USES, type Use } from '../tree/tree.ts'
import { type Either, levelsOf, variations } from './either.ts'
import { type Walk, walk } from './walk.ts'

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

/** How answers are walked: by the reference, or by the machine that is held to it. */
export type Walks = (tree: Tree, answers: Answers) => Walk

/**
 * What can still happen: exactly the outcomes of the complete sets that hold these answers; once the
 * walk is finished, its outcome. An emergency is left out until an emergency sign is told.
 *
 * Unasked facts told after the walk ends (a volunteered sign, a second answer to a settled observation)
 * are corrections: they can only make the outcome stricter.
 */
export function possible(tree: Tree, answers: Answers, either: readonly Either[] = []): Possible {
  return possibleAfter(tree, answers, either, walkEither(tree, answers, either, walk))
}

/**
 * A walk on which several things can have been told of which only one is so. It is finished once it is
 * finished whichever that is. Each track and the use then stand as in the most cautious of them, with
 * the trail and the notes of the answers that count.
 */
export function walkEither(
  tree: Tree,
  answers: Answers,
  either: readonly Either[],
  walks: Walks
): Walk {
  const walked = walks(tree, answers)
  if (either.length === 0 || emergenciesTold(tree, answers).length > 0) return walked
  const all = [walked, ...variations(answers, either).map(each => walks(tree, each))]
  const outcome = all.map(each => each.outcome).reduce((a, b) => moreCautious(tree, a, b))
  const unfinished = all.find(({ finished }) => !finished)
  if (unfinished !== undefined) return { ...unfinished, outcome }
  // Two things told of two observations each: what only both together come to counts as well.
  const complete = withUntold(tree, answers, either)
  const most = (lens: Track | 'use') =>
    levelsOf(diagramsOf(tree), diagramsOf(tree).of(lens), complete, either).at(-1) ?? 0
  const together: Outcome = {
    person: verdictAt(tree, 'person', most('person')),
    container: verdictAt(tree, 'container', most('container')),
    batch: verdictAt(tree, 'batch', most('batch')),
    use: useAt(most('use')),
    notes: []
  }
  return { ...walked, outcome: moreCautious(tree, outcome, together) }
}

/**
 * The answers of a finished walk with what it takes for granted of the untold: a sign that is only heard
 * counts as no, what settles nothing and a measure that is only heard as unsure.
 */
function withUntold(tree: Tree, answers: Answers, either: readonly Either[]): Answers {
  let complete = answers
  for (const observation of Object.values(tree.observations)) {
    if (observation.kind === 'signs') {
      const untold = observation.signs.map(({ id }) => [id, 'no' as const] as const)
      const before = signsOf(complete, observation.id)
      complete = { ...complete, [observation.id]: { ...Object.fromEntries(untold), ...before } }
    } else if (
      (observation.kind === 'measure' || observation.settles !== undefined) &&
      !Object.hasOwn(complete, observation.id) &&
      !either.some(one => one.observation === observation.id)
    ) {
      complete = { ...complete, [observation.id]: 'unsure' }
    }
  }
  return complete
}

/** Each track and the use as in the more cautious of two outcomes, with the notes of the first. */
function moreCautious(tree: Tree, a: Outcome, b: Outcome): Outcome {
  const worse = (track: Track) =>
    level(tree, track, b[track]) > level(tree, track, a[track]) ? b[track] : a[track]
  return {
    person: worse('person'),
    container: worse('container'),
    batch: worse('batch'),
    use: useLevel(b.use) > useLevel(a.use) ? b.use : a.use,
    notes: a.notes
  }
}

/** What can still happen after a walk of these answers. */
export function possibleAfter(
  tree: Tree,
  answers: Answers,
  either: readonly Either[],
  { finished, outcome }: Walk
): Possible {
  if (finished) {
    const { person, container, batch, use } = outcome
    return summary([person], [container], [batch], [use])
  }
  const diagrams = diagramsOf(tree)
  const levels = (lens: Track | 'use') => levelsOf(diagrams, diagrams.of(lens), answers, either)
  const verdicts = (track: Track) => levels(track).map(reached => verdictAt(tree, track, reached))
  return summary(
    verdicts('person'),
    verdicts('container'),
    verdicts('batch'),
    levels('use').map(useAt)
  )
}

const verdictAt = (tree: Tree, track: Track, index: number): string | null =>
  index === 0 ? null : must(verdictsOf(tree, track)[index - 1])

const useAt = (index: number): Use => must(USES[index])

/** @throws Error where nothing is left that can happen: no verdict stands in for it. */
function must<T>(first: T | undefined): T {
  // INVARIANT: every mask leaves a value and every walk ends, so some outcome can always happen.
  if (first === undefined) throw new Error('no outcome is possible')
  return first
}

function summary(
  person: readonly (string | null)[],
  container: readonly (string | null)[],
  batch: readonly (string | null)[],
  use: readonly Use[]
): Possible {
  return {
    person,
    container,
    batch,
    use,
    atLeast: {
      person: must(person[0]),
      container: must(container[0]),
      batch: must(batch[0]),
      use: must(use[0])
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
